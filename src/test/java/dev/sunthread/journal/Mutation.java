package dev.sunthread.journal;

import dev.sunthread.ledger.body.FieldProblem;

/**
 * A line that one change made wrong.
 *
 * @param what the change, in words
 * @param field the path of the field that the report has to name
 */
record Mutation(String what, String field, String line) {

    /** Whether a problem says where the change is; of a field that stands twice the reader knows no path. */
    boolean isNamedBy(FieldProblem problem) {
        String name = field.substring(field.lastIndexOf('.') + 1);
        return problem.field().equals(field)
                || what.equals("twice") && problem.reason().contains("\"" + name + "\"")
                || what.contains("list of lists") && problem.field().startsWith(field);
    }

    @Override
    public String toString() {
        return what + " at " + field + ": " + (line.length() > 400 ? line.substring(0, 400) : line);
    }
}
