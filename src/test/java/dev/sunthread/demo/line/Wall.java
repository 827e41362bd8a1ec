package dev.sunthread.demo.line;

import dev.sunthread.demo.floor.Piece;
import dev.sunthread.demo.told.PlantTime;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;

/** A receiver wall: which of its day it is, when work on it begins, and the receivers in its positions. */
record Wall(int number, int day, int index, List<Piece> receivers) {

    static final int SIZE = 12;

    static Wall empty(int number, int day, int index) {
        return new Wall(number, day, index, new ArrayList<>());
    }

    Piece piece() {
        return new Piece("WAL-200", "RW-%04d".formatted(number));
    }

    String station() {
        return "WALL-" + (1 + index % 2);
    }

    OffsetDateTime start() {
        return PlantTime.at(day, "06:15").plusMinutes(50L * (index / 2));
    }

    OffsetDateTime timeOf(int position) {
        return start().plusMinutes(2L * (position - 1));
    }
}
