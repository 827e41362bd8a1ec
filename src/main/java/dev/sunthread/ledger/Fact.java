package dev.sunthread.ledger;

import dev.sunthread.kernel.RuleBroken;
import dev.sunthread.kernel.TraceRef;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * An envelope on its way into history: its entry's number, its body as read, and the findings raised so far.
 *
 * @param <B> the body
 */
public final class Fact<B> {

    private final long entry;
    private final EnvelopeHead head;
    private final OffsetDateTime occurredAt;
    private final B body;
    private final Manner manner;
    private final List<RaisedFinding> findings;

    Fact(long entry, EnvelopeHead head, OffsetDateTime occurredAt, B body, Manner manner) {
        this(entry, head, occurredAt, body, manner, new ArrayList<>());
    }

    private Fact(
            long entry,
            EnvelopeHead head,
            OffsetDateTime occurredAt,
            B body,
            Manner manner,
            List<RaisedFinding> findings) {
        this.entry = entry;
        this.head = head;
        this.occurredAt = occurredAt;
        this.body = body;
        this.manner = manner;
        this.findings = findings;
    }

    /** The same entry telling another happening, as a correction does; findings go to the same entry. */
    <C> Fact<C> retold(OffsetDateTime at, C other) {
        return new Fact<>(entry, head, at, other, manner, findings);
    }

    public long entry() {
        return entry;
    }

    public String id() {
        return head.id();
    }

    public String actor() {
        return head.actor();
    }

    public String source() {
        return head.source();
    }

    public OffsetDateTime occurredAt() {
        return occurredAt;
    }

    public B body() {
        return body;
    }

    /** Whether the envelope asks for something to be done, so that a broken rule still can stop it. */
    public boolean isAsked() {
        return manner == Manner.DO;
    }

    /**
     * Says that a rule is broken: refuses what is asked to be done, or notes a finding beside what was done.
     *
     * @throws RuleBroken if the envelope asks for something to be done
     */
    public void breaks(String rule, String sentence, String remedy, TraceRef... about) {
        if (manner == Manner.DO) {
            throw new RuleBroken(rule, sentence, remedy, List.of(about));
        }
        shows(rule, sentence, remedy, about);
    }

    /** Says that what is recorded shows a breach that a person must settle; it is recorded however it was asked for. */
    public void shows(String rule, String sentence, String remedy, TraceRef... about) {
        findings.add(new RaisedFinding(rule, sentence, remedy, List.of(about)));
    }

    List<RaisedFinding> findings() {
        return List.copyOf(findings);
    }
}
