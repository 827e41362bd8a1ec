package dev.sunthread.ledger;

import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.Shape;
import dev.sunthread.ledger.body.TextForm;
import dev.sunthread.ledger.body.Unreadable;
import java.time.OffsetDateTime;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import tools.jackson.databind.node.ObjectNode;

/** Takes an earlier entry back and tells the same happening as it was. */
@Component
class CorrectionKind implements Kind<CorrectionKind.Body> {

    record Body(
            @Field(value = "The id of the envelope that is corrected", text = TextForm.ID)
            String entry,

            @Field(value = "Why it is corrected", text = TextForm.NOTE)
            String why,

            @Field("When the happening really occurred; absent if that was right") @Nullable
            OffsetDateTime occurredAt,

            @Field("The whole body as it should have been, of the kind that is corrected")
            ObjectNode body) {}

    private final Withdrawal withdrawal;
    private final ObjectProvider<Kinds> kinds;
    private final Entries entries;
    private final Ahead ahead;
    private final JdbcClient jdbc;

    CorrectionKind(Withdrawal withdrawal, ObjectProvider<Kinds> kinds, Entries entries, Ahead ahead, JdbcClient jdbc) {
        this.withdrawal = withdrawal;
        this.entries = entries;
        this.kinds = kinds;
        this.ahead = ahead;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "correction";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "An earlier entry told a happening wrongly; this tells it as it was, whole.";
    }

    @Override
    public void record(Fact<Body> fact) {
        NamedEntry original =
                withdrawal.withdraw(fact, fact.body().entry(), fact.body().why());
        jdbc.sql("INSERT INTO ledger.correction (entry, kind, kind_version) VALUES (?, ?, ?)")
                .params(fact.entry(), original.kind(), original.kindVersion())
                .update();
        tell(kinds.getObject().get(original.kind(), original.kindVersion()), fact, original);
    }

    private <B> void tell(Kind<B> kind, Fact<Body> fact, NamedEntry original) {
        OffsetDateTime stated = fact.body().occurredAt();
        B body = Shape.of(kind.body()).read(fact.body().body(), "body.body");
        try {
            Fact<B> retold = fact.retold(stated == null ? happened(original) : stated, body);
            kind.record(retold);
            ahead.happeningIsNotInTheFuture(kind, retold);
        } catch (Unreadable e) {
            throw e.within("body");
        }
    }

    /** When the happening of an entry occurred; an entry that is a correction itself occurred later than that. */
    private OffsetDateTime happened(NamedEntry entry) {
        return earlierCorrection(entry)
                .map(earlier -> earlier.occurredAt() == null
                        ? happened(entries.named(earlier.entry()).orElseThrow())
                        : earlier.occurredAt())
                .orElse(entry.occurredAt());
    }

    private Optional<Body> earlierCorrection(NamedEntry entry) {
        return jdbc.sql("SELECT e.envelope FROM ledger.correction c JOIN ledger.entry e ON e.number = c.entry"
                        + " WHERE c.entry = ?")
                .param(entry.number())
                .query(String.class)
                .optional()
                .map(text -> Shape.of(Body.class)
                        .read(EnvelopeReader.read(EnvelopeReader.parse(text)).body(), "body"));
    }
}
