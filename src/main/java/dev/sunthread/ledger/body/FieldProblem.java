package dev.sunthread.ledger.body;

/**
 * What is wrong with one field of a line, and what to do about it. The field is a path such as {@code
 * body.uses[2].lot}. All three are short and whole, whatever the line holds, so that they can be shown and kept.
 */
public record FieldProblem(String field, String reason, String remedy) {

    private static final int LONGEST = 1000;

    public FieldProblem {
        field = shown(field);
        reason = shown(reason);
        remedy = shown(remedy);
    }

    /** Halves of character pairs stand as the replacement character; no output and no database takes them. */
    private static String shown(String text) {
        String whole = text.codePoints()
                .limit(LONGEST)
                .map(c -> Character.getType(c) == Character.SURROGATE ? '\uFFFD' : c)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
        return text.length() > whole.length() ? whole + "..." : whole;
    }

    @Override
    public String toString() {
        return field + ": " + reason + ". " + remedy + ".";
    }
}
