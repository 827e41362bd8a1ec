package dev.sunthread.journal;

/**
 * A line that one change made wrong.
 *
 * @param what the change, in words
 * @param field the path of the field that the report has to name
 */
record Mutation(String what, String field, String line) {

    @Override
    public String toString() {
        return what + " at " + field + ": " + (line.length() > 400 ? line.substring(0, 400) : line);
    }
}
