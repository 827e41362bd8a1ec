package dev.sunthread.demo.line;

import dev.sunthread.demo.floor.Piece;
import dev.sunthread.demo.told.Bodies;
import dev.sunthread.demo.told.PlantTime;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.stream.IntStream;
import tools.jackson.databind.node.ObjectNode;

/** Twenty receivers that are made together, bonded in four rows of five. */
record Tray(int number, int day, int index, String bonder, OffsetDateTime start) {

    static final int SIZE = 20;
    static final int ROWS = 4;
    private static final int MINUTES_A_ROW = 18;
    private static final int CARRIERS = 60;

    static Tray of(int number, int day, int index) {
        OffsetDateTime start = PlantTime.at(day, "06:10").plusMinutes(80L * (index / 2));
        return new Tray(number, day, index, "BOND-" + (1 + index % 2), start);
    }

    /** The tray that is bonded on the Saturday night on which clocks go from three back to two. */
    static Tray ofTheNight(int number, int day) {
        OffsetDateTime start = PlantTime.on(PlantTime.date(day).plusDays(1), "23:50");
        return new Tray(number, day, 1, "BOND-2", start);
    }

    List<Piece> receivers() {
        return IntStream.rangeClosed(1, SIZE)
                .mapToObj(i -> new Piece("RCV-100", "RC-%05d".formatted(number * SIZE + i)))
                .toList();
    }

    List<Piece> row(int row) {
        return receivers().subList(row * SIZE / ROWS, (row + 1) * SIZE / ROWS);
    }

    OffsetDateTime end(int row) {
        return start.plusMinutes((long) MINUTES_A_ROW * (row + 1));
    }

    OffsetDateTime end() {
        return end(ROWS - 1);
    }

    String carrier() {
        return "TRAY-%02d".formatted(1 + number % CARRIERS);
    }

    /** Its receivers in their positions, as a carrier is loaded with them. */
    List<ObjectNode> loads() {
        List<Piece> receivers = receivers();
        return IntStream.range(0, SIZE)
                .mapToObj(i -> Bodies.of(
                        "unit", receivers.get(i).json(), "position", "%c%d".formatted('A' + i / 5, 1 + i % 5)))
                .toList();
    }
}
