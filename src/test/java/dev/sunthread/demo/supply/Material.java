package dev.sunthread.demo.supply;

import dev.sunthread.demo.told.Table;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A material that comes in lots and is used a lot at a time, by the calendar.
 *
 * @param letter what its lot numbers begin with
 * @param first the number of its first lot
 * @param every working days until the next lot is taken
 * @param aDay how much a line of twenty trays a day needs on a working day
 * @param keeps working days from receipt until it may no longer be used; 0 for as long as one likes
 */
record Material(
        String item,
        String letter,
        int first,
        int every,
        int aDay,
        String unitOfMeasure,
        String supplier,
        String prefix,
        int keeps) {

    private static final String ALL = """
            CELL-30 | C | 101 | 5  | 430  | pcs | Lumenfeld Cells    | LF | 0
            HSP-12  | H | 21  | 10 | 430  | pcs | Tindermark Metals  | TM | 0
            TIM-5   | A | 11  | 5  | 120  | g   | Mossgate Bonding   | MB | 60
            FST-8   | N | 31  | 10 | 860  | pcs | Tindermark Metals  | TM | 0
            SW-60   | W | 31  | 5  | 110  | g   | Tindermark Metals  | TM | 0
            FLX-2   | F | 41  | 7  | 50   | ml  | Mossgate Bonding   | MB | 55
            CC-8    | K | 51  | 4  | 680  | ml  | Fernhollow Coats   | FH | 40
            SHD-3   | S | 91  | 10 | 430  | pcs | Tindermark Metals  | TM | 0
            SOE-14  | O | 11  | 5  | 430  | pcs | Brindlewick Optics | BW | 0
            UVA-7   | U | 61  | 3  | 60   | ml  | Mossgate Bonding   | MB | 30
            CHS-4   | X | 81  | 10 | 38   | pcs | Tindermark Metals  | TM | 0
            SIL-9   | Q | 71  | 4  | 5800 | g   | Fernhollow Coats   | FH | 45
            MIR-6   | M | 31  | 8  | 145  | pcs | Oakrune Glass      | OR | 0
            EPR-1   | Y | 21  | 10 | 800  | g   | Mossgate Bonding   | MB | 90
            EPH-1   | Z | 21  | 10 | 330  | g   | Mossgate Bonding   | MB | 90
            GLS-2   | G | 41  | 6  | 38   | pcs | Oakrune Glass      | OR | 0
            FRM-5   | R | 51  | 10 | 3    | pcs | Tindermark Metals  | TM | 0
            WLD-2   | L | 21  | 10 | 110  | g   | Tindermark Metals  | TM | 0
            """;

    private static final Map<String, Material> BY_ITEM = Table.rows(ALL).stream()
            .map(Material::of)
            .collect(Collectors.toMap(Material::item, material -> material, (a, b) -> a, LinkedHashMap::new));

    /** Supplier lots behind the receipts of cells; one of them stands behind three. */
    private static final List<List<String>> CELLS = List.of(
            List.of("LF-7736"),
            List.of("LF-7736", "LF-7738"),
            List.of("LF-7740", "LF-7741"),
            List.of("LF-7740", "LF-7744"),
            List.of("LF-7741"),
            List.of("LF-7744", "LF-7749"),
            List.of("LF-7741", "LF-7752"),
            List.of("LF-7752"),
            List.of("LF-7755"),
            List.of("LF-7755", "LF-7758"),
            List.of("LF-7760"));

    static List<Material> all() {
        return List.copyOf(BY_ITEM.values());
    }

    static Material of(String item) {
        return Objects.requireNonNull(BY_ITEM.get(item), item);
    }

    private static Material of(List<String> row) {
        int[] numbers = IntStream.of(2, 3, 4, 8)
                .map(column -> Integer.parseInt(row.get(column)))
                .toArray();
        return new Material(
                row.get(0),
                row.get(1),
                numbers[0],
                numbers[1],
                numbers[2],
                row.get(5),
                row.get(6),
                row.get(7),
                numbers[3]);
    }

    /** The number of a lot, counted from 0. */
    String lot(int number) {
        return letter + "-" + (first + number);
    }

    /** The lot that serves on a working day, at a place that changes some days before the others. */
    String lotOn(int workday, int ahead) {
        return lot((Math.max(workday, 0) + ahead) / every);
    }

    List<String> supplierLots(int number) {
        if (item.equals("CELL-30")) {
            return CELLS.get(Math.min(number, CELLS.size() - 1));
        }
        int own = 100 * (letter.charAt(0) - 'A' + 1) + 3 * number;
        return number % 3 == 1
                ? List.of("%s-%d".formatted(prefix, own - 3), "%s-%d".formatted(prefix, own))
                : List.of("%s-%d".formatted(prefix, own));
    }
}
