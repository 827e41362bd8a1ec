package dev.sunthread.web.compare;

import dev.sunthread.kernel.UnitId;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Two units side by side as they are built now: position by position, and lot by lot. */
public record UnitComparison(UnitId left, UnitId right, List<PositionRow> positions, List<LotRow> lots) {

    /** The rows in which the sides differ. */
    UnitComparison differing() {
        return new UnitComparison(
                left,
                right,
                positions.stream().filter(row -> row.verdict() != Verdict.SAME).toList(),
                lots.stream().filter(row -> row.verdict() != Verdict.SAME).toList());
    }

    /** What two sides have to do with each other. */
    public enum Verdict {
        SAME("same"),
        DIFFERENT("different"),
        ONLY_LEFT("only left"),
        ONLY_RIGHT("only right");

        private final String words;

        Verdict(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** What is in a position: a unit, or a part of a lot. */
    public record Part(
            String level, @Nullable UnitId unit, @Nullable String lot) {

        // no serial is twice: units are the same if they are of one item
        boolean isSameAs(Part other) {
            return unit != null && other.unit != null
                    ? unit.item().equals(other.unit.item())
                    : lot != null && lot.equals(other.lot);
        }
    }

    /** A position, written from the outside in, with what each side has there. */
    public record PositionRow(
            String path,
            int depth,
            @Nullable Part left,
            @Nullable Part right,
            Verdict verdict) {

        static PositionRow of(String path, @Nullable Part left, @Nullable Part right) {
            int depth = path.split(" / ").length - 1;
            return new PositionRow(path, depth, left, right, verdict(left, right));
        }

        private static Verdict verdict(@Nullable Part left, @Nullable Part right) {
            if (left == null || right == null) {
                return left == null ? Verdict.ONLY_RIGHT : Verdict.ONLY_LEFT;
            }
            return left.isSameAs(right) ? Verdict.SAME : Verdict.DIFFERENT;
        }
    }

    /** A lot in either side, with how many of that side's units took it in; nought if none did. */
    public record LotRow(String item, String lot, long left, long right) {

        public Verdict verdict() {
            if (left > 0 && right > 0) {
                return Verdict.SAME;
            }
            return left > 0 ? Verdict.ONLY_LEFT : Verdict.ONLY_RIGHT;
        }
    }
}
