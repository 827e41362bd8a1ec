package dev.sunthread.materials.incoming;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.holds.Holds;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import dev.sunthread.materials.LotRules;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** A lot that came in was inspected, and released or rejected. */
@Component
@Needs(Right.JUDGE)
class IncomingReleaseKind implements Kind<IncomingReleaseKind.Body> {

    record Body(
            @Field("The lot") String lot,
            @Field("Whether it may be used") Verdict verdict,

            @Field(value = "What was looked at, and what was seen", text = TextForm.NOTE)
            String inspected,

            @Field(value = "SHA-256 of each attached certificate it rests on", text = TextForm.SHA256, atMost = 100)
            List<String> certificates) {}

    private final LotRules rules;
    private final Attachments attachments;
    private final Holds holds;
    private final JdbcClient jdbc;

    IncomingReleaseKind(LotRules rules, Attachments attachments, Holds holds, JdbcClient jdbc) {
        this.rules = rules;
        this.attachments = attachments;
        this.holds = holds;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "incoming-release";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "A lot that came in was inspected and released, or rejected and put on hold.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        long lot = rules.named(fact, body.lot());
        jdbc.sql("INSERT INTO materials.incoming_release (entry, lot, verdict, inspected, released_at)"
                        + " VALUES (?, ?, ?, ?, ?)")
                .params(fact.entry(), lot, body.verdict().name(), body.inspected(), fact.occurredAt())
                .update();
        body.certificates().stream().distinct().forEach(certificate -> {
            certificateIsAttached(fact, lot, certificate);
            jdbc.sql("INSERT INTO materials.incoming_certificate (entry, sha256) VALUES (?, ?)")
                    .params(fact.entry(), certificate)
                    .update();
        });
        if (body.verdict() == Verdict.REJECTED) {
            holds.place(fact, TraceRef.lot(lot), "Rejected when it came in: " + body.inspected());
        }
    }

    private void certificateIsAttached(Fact<Body> fact, long lot, String certificate) {
        if (!attachments.isAttached(certificate)) {
            fact.breaks(
                    "certificate-is-attached",
                    "No attached document has the SHA-256 " + certificate + ", on which the release of lot "
                            + fact.body().lot() + " rests",
                    "Attach the certificate, or correct its hash",
                    TraceRef.lot(lot));
        }
    }
}
