package dev.sunthread.demo.line;

import dev.sunthread.demo.told.Bodies;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.node.ObjectNode;

/** A receiver wall and the receivers in its positions R1, R2 and so on. */
public record Wall(String serial, List<String> receivers) {

    public static final int SIZE = 12;

    public static Wall empty(int number) {
        return new Wall("RW-%04d".formatted(number), new ArrayList<>());
    }

    public ObjectNode unit() {
        return Bodies.unit("WAL-200", serial);
    }

    public String nextPosition() {
        return "R" + (receivers.size() + 1);
    }
}
