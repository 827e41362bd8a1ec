package dev.sunthread.ledger;

import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import java.time.OffsetDateTime;

/** What every envelope says before its body. */
public record EnvelopeHead(
        @Field(value = "Given by the sender; sending the same id again changes nothing", text = TextForm.ID)
        String id,

        @Field("The kind of happening, one of those below") String kind,

        @Field(value = "The version of the kind's fields", positive = true)
        int version,

        @Field("When it happened, by the sender's clock") OffsetDateTime occurredAt,

        @Field("The person or machine that says so, by a mark that is not a name")
        String actor,

        @Field("Where it was said, such as a station or a file")
        String source) {}
