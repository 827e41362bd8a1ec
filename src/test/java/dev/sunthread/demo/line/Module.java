package dev.sunthread.demo.line;

import dev.sunthread.demo.floor.Piece;
import dev.sunthread.demo.told.PlantTime;
import java.time.OffsetDateTime;

/** A module, the wall in it, and which of its day it is. */
record Module(int number, int day, int index, Piece wall) {

    Piece piece() {
        return new Piece("MOD-300", "MD-%04d".formatted(number));
    }

    OffsetDateTime start() {
        return PlantTime.at(day, "06:20").plusMinutes(24L * index);
    }
}
