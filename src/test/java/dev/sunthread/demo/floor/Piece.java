package dev.sunthread.demo.floor;

import dev.sunthread.demo.told.Bodies;
import java.util.List;
import tools.jackson.databind.node.ObjectNode;

/** A unit by its item and serial. */
public record Piece(String item, String serial) {

    public ObjectNode json() {
        return Bodies.of("item", item, "serial", serial);
    }

    public static List<ObjectNode> json(List<Piece> pieces) {
        return pieces.stream().map(Piece::json).toList();
    }

    public static List<String> serials(List<Piece> pieces) {
        return pieces.stream().map(Piece::serial).toList();
    }
}
