package dev.sunthread.web.lot;

import dev.sunthread.materials.stock.Balance;
import dev.sunthread.materials.stock.Movement;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Where a lot went, as two bars of one scale: what came in above, where it is or went below.
 *
 * @param in what came in, from left to right
 * @param out what became of it, from left to right; the unexplained rest last
 */
public record BalancePicture(List<Part> in, List<Part> out) {

    static final int WIDTH = 640;
    private static final int ROOM_FOR_A_LETTER = 7;
    private static final Set<Movement.Way> IN =
            Set.of(Movement.Way.RECEIVED, Movement.Way.MADE_HERE, Movement.Way.FILLED);
    private static final Set<Movement.Way> TOLD_ONLY =
            Set.of(Movement.Way.COUNTED, Movement.Way.ISSUED_WITHIN_THE_PLANT, Movement.Way.BROUGHT_BACK_TO_THE_STORE);

    /**
     * A part of a bar.
     *
     * @param pattern the number of the pattern that fills it
     * @param roomy whether its words fit into it
     */
    public record Part(String words, BigDecimal quantity, int x, int width, int pattern, boolean roomy) {}

    private record Piece(String words, BigDecimal quantity, int pattern) {}

    /** Whether there is anything to draw. */
    public boolean isEmpty() {
        return in.isEmpty() && out.isEmpty();
    }

    static BalancePicture of(Balance balance) {
        List<Piece> in = new ArrayList<>();
        List<Piece> out = new ArrayList<>();
        for (Balance.Line line : balance.lines()) {
            if (!TOLD_ONLY.contains(line.way()) && line.quantity().signum() > 0) {
                List<Piece> side = IN.contains(line.way()) ? in : out;
                side.add(new Piece(line.way().words(), line.quantity(), (side == in ? 0 : 1) + side.size() % 3));
            }
        }
        add(out, "on hand", balance.onHand(), 4);
        add(out, "unexplained", balance.unexplained(), 5);
        BigDecimal whole = sum(in).max(sum(out));
        return new BalancePicture(parts(in, whole), parts(out, whole));
    }

    private static void add(List<Piece> pieces, String words, BigDecimal quantity, int pattern) {
        if (quantity.signum() > 0) {
            pieces.add(new Piece(words, quantity, pattern));
        }
    }

    private static BigDecimal sum(List<Piece> pieces) {
        return pieces.stream().map(Piece::quantity).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static List<Part> parts(List<Piece> pieces, BigDecimal whole) {
        List<Part> parts = new ArrayList<>();
        BigDecimal before = BigDecimal.ZERO;
        for (Piece piece : pieces) {
            int x = x(before, whole);
            before = before.add(piece.quantity());
            int width = Math.max(2, x(before, whole) - x);
            parts.add(new Part(
                    piece.words(),
                    piece.quantity(),
                    x,
                    width,
                    piece.pattern(),
                    width >= (piece.words().length() + 2) * ROOM_FOR_A_LETTER * 4 / 3));
        }
        return parts;
    }

    private static int x(BigDecimal quantity, BigDecimal whole) {
        return quantity.multiply(BigDecimal.valueOf(WIDTH))
                .divide(whole, 0, RoundingMode.HALF_UP)
                .intValue();
    }
}
