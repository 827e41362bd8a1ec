package dev.sunthread.demo;

import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.node.ObjectNode;

/** A receiver wall and the receivers in its positions R1, R2 and so on. */
record Wall(String serial, List<String> receivers) {

    static final int SIZE = 12;

    static Wall empty(int number) {
        return new Wall("RW-%04d".formatted(number), new ArrayList<>());
    }

    ObjectNode unit() {
        return Bodies.unit("WAL-200", serial);
    }

    String nextPosition() {
        return "R" + (receivers.size() + 1);
    }
}
