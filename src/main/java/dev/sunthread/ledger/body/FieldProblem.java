package dev.sunthread.ledger.body;

/** What is wrong with one field of a line, and what to do about it. The field is a path such as {@code body.uses[2].lot}. */
public record FieldProblem(String field, String reason, String remedy) {

    @Override
    public String toString() {
        return field + ": " + reason + ". " + remedy + ".";
    }
}
