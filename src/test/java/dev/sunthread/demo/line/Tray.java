package dev.sunthread.demo.line;

import dev.sunthread.demo.told.Bodies;
import dev.sunthread.demo.told.PlantTime;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.stream.IntStream;
import tools.jackson.databind.node.ObjectNode;

/** Twelve receivers that are made together, and when each operation begins on them. */
record Tray(
        int number,
        String bonder,
        OffsetDateTime bond,
        OffsetDateTime solder,
        OffsetDateTime coatStart,
        OffsetDateTime coatEnd,
        OffsetDateTime optic) {

    static final int SIZE = 12;

    /** The tray that goes first through a day. */
    static Tray first(int number, int day) {
        return new Tray(
                number,
                "BOND-1",
                PlantTime.at(day, "06:30"),
                PlantTime.at(day, "08:30"),
                PlantTime.at(day, "10:00"),
                PlantTime.at(day, "10:25"),
                PlantTime.at(day, "11:30"));
    }

    /** The tray that goes second through a day. */
    static Tray second(int number, int day) {
        return new Tray(
                number,
                "BOND-2",
                PlantTime.at(day, "06:32"),
                PlantTime.at(day, "09:00"),
                PlantTime.at(day, "10:40"),
                PlantTime.at(day, "11:05"),
                PlantTime.at(day, "12:30"));
    }

    /** The tray of the night in which clocks went from two to three while it was being coated. */
    static Tray ofTheNight(int number) {
        return new Tray(
                number,
                "BOND-2",
                PlantTime.at(28, "22:30"),
                PlantTime.at(29, "00:15"),
                PlantTime.at(29, "01:50"),
                PlantTime.at(29, "03:15"),
                PlantTime.at(29, "04:30"));
    }

    String serial(int index) {
        return "RC-%04d".formatted(number * SIZE + index + 1);
    }

    List<ObjectNode> receivers() {
        return IntStream.range(0, SIZE)
                .mapToObj(i -> Bodies.unit("RCV-100", serial(i)))
                .toList();
    }
}
