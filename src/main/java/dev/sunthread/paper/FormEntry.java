package dev.sunthread.paper;

import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What stood on a record when it was entered, word for word, and what was recorded of it. */
public record FormEntry(
        @Field("The id of the record") String record,
        @Field("What it is for") FormKind form,

        @Field("The station where it was used") String station,

        @Field("The item whose route has the operation, if it is for one") @Nullable
        String item,

        @Field("The operation, if it is for one") @Nullable String operation,

        @Field("When it began, if that is written; it ended when the envelope occurred") @Nullable
        OffsetDateTime startedAt,

        @Field(value = "To how many seconds the times on it are right", positive = true)
        int seconds,

        @Field(value = "Its boxes that are filled in", atMost = 500)
        List<Written> boxes,

        @Field(value = "The ids of what was recorded or kept in the inbox of it", atMost = 100)
        List<String> entries) {

    /** The actor of a record whose writer nobody can make out. */
    public static final String UNREADABLE = "unreadable";

    /** What stands in one box. */
    public record Written(
            @Field("The box, by its name on the form") String box,

            @Field(value = "What is written there", text = TextForm.NOTE)
            String text) {

        /** What was typed or scanned; the separators of a code are put as dots. */
        public static Written of(String box, String text) {
            return new Written(box, text.replaceAll("\\p{Cntrl}", "·"));
        }
    }
}
