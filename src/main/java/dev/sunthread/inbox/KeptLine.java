package dev.sunthread.inbox;

import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.FieldProblem;
import dev.sunthread.ledger.body.TextForm;
import java.util.List;

/** A line that could not be accepted, with what is wrong with it and what it names as far as it could be read. */
public record KeptLine(
        @Field(value = "The file or address the line came from", text = TextForm.NAME)
        String file,

        @Field(value = "The line's number in it, from 1", positive = true)
        int lineNumber,

        @Field(value = "The line's length in bytes") int length,

        @Field("SHA-256 of the line's bytes, in hexadecimal")
        String sha256,

        @Field(value = "The line's text, its beginning if it is very long", text = TextForm.RAW)
        String text,

        @Field(value = "What is wrong with it", atLeast = 1) List<Problem> problems,
        @Field("What it names, as far as it could be read") List<Name> names) {

    /** One thing that is wrong with a line. */
    public record Problem(
            @Field(value = "The field", text = TextForm.RAW) String field,

            @Field(value = "What is wrong", text = TextForm.RAW)
            String reason,

            @Field(value = "What to do", text = TextForm.RAW)
            String remedy) {

        public static Problem of(FieldProblem problem) {
            return new Problem(whole(problem.field()), whole(problem.reason()), whole(problem.remedy()));
        }

        /** Text without halves of character pairs, which no database keeps. */
        private static String whole(String text) {
            return text.codePoints()
                    .map(c -> Character.getType(c) == Character.SURROGATE ? '\uFFFD' : c)
                    .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                    .toString();
        }
    }

    /** Something that a line names. */
    public record Name(
            @Field("What it is") NameKind kind,
            @Field("The name as written") String name) {}

    /** What a line can name. */
    public enum NameKind {
        UNIT,
        LOT,
        POSITION
    }
}
