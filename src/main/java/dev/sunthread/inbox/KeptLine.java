package dev.sunthread.inbox;

import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.FieldProblem;
import dev.sunthread.ledger.body.TextForm;
import java.util.List;
import java.util.regex.Pattern;

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

    private static final Pattern SHA256 = Pattern.compile("[0-9a-f]{64}");

    public KeptLine {
        if (length < 0) {
            throw new Contradiction("length", "is less than nought", "Give the number of bytes");
        }
        if (!SHA256.matcher(sha256).matches()) {
            throw new Contradiction("sha256", "is no SHA-256", "Give 64 digits 0-9 and a-f");
        }
    }

    /** One thing that is wrong with a line. */
    public record Problem(
            @Field(value = "The field", text = TextForm.RAW) String field,

            @Field(value = "What is wrong", text = TextForm.RAW)
            String reason,

            @Field(value = "What to do", text = TextForm.RAW)
            String remedy) {

        public static Problem of(FieldProblem problem) {
            return new Problem(problem.field(), problem.reason(), problem.remedy());
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
        POSITION,
        CONTAINER,
        CARRIER,
        RUN
    }
}
