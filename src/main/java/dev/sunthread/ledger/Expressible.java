package dev.sunthread.ledger;

import dev.sunthread.ledger.body.FieldProblem;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;

/** Finds what JSON can spell and its canonical form can't: halves of character pairs and numbers without end. */
final class Expressible {

    private final List<FieldProblem> problems = new ArrayList<>();

    private Expressible() {}

    /** Every such value or field name in an envelope, with its path. */
    static List<FieldProblem> problems(JsonNode envelope) {
        Expressible found = new Expressible();
        envelope.properties()
                .forEach(field -> found.check(
                        field.getKey(),
                        field.getValue(),
                        field.getKey().equals("body") ? "body" : "envelope." + field.getKey()));
        return found.problems;
    }

    private void check(String name, JsonNode json, String path) {
        textIsWhole(name, path);
        if (json.isString()) {
            textIsWhole(json.stringValue(), path);
        } else if (json.isNumber()) {
            numberIsFinite(json, path);
        } else if (json.isObject()) {
            json.properties().forEach(field -> check(field.getKey(), field.getValue(), path + "." + field.getKey()));
        } else {
            for (int i = 0; i < json.size(); i++) {
                check("", json.get(i), path + "[" + i + "]");
            }
        }
    }

    private void textIsWhole(String text, String path) {
        if (text.codePoints().anyMatch(c -> Character.getType(c) == Character.SURROGATE)) {
            problems.add(new FieldProblem(path, "has half of a character pair", "Send the character whole"));
        }
    }

    private void numberIsFinite(JsonNode json, String path) {
        try {
            if (Double.isFinite(Double.parseDouble(json.toString()))) {
                return;
            }
        } catch (NumberFormatException e) {
            // what has overflowed is written as a word
        }
        problems.add(new FieldProblem(path, "is a number beyond any measure", "Give the number that was meant"));
    }
}
