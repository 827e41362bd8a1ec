package dev.sunthread.station.work;

import dev.sunthread.ledger.Acceptance;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Envelope;
import dev.sunthread.ledger.EnvelopeHead;
import dev.sunthread.ledger.Manner;
import dev.sunthread.ledger.RaisedFinding;
import dev.sunthread.scan.ScanChoice;
import dev.sunthread.station.Scan;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ObjectNode;

/** Hands to the door what one scan records, as said by the person at the station; one transaction holds it all. */
public final class Recording {

    private final Door door;
    private final String station;
    private final String person;
    private final Scan scan;
    private final List<String> entries = new ArrayList<>();
    private @Nullable String operation;
    private boolean tries;
    private boolean tried;
    private final List<RaisedFinding> findings = new ArrayList<>();

    public Recording(Door door, String station, String person, Scan scan) {
        this.door = door;
        this.station = station;
        this.person = person;
        this.scan = scan;
    }

    /** The same that sees first whether what begins may be done; see {@link #tries}. */
    public Recording trying() {
        tries = !scan.kept();
        return this;
    }

    /**
     * Records one happening at the moment of the scan.
     *
     * @throws dev.sunthread.kernel.Refused if the scan asks for it and a rule forbids it
     */
    public void record(String kind, ObjectNode body) {
        accept(Envelope.of(head(kind), body));
    }

    /**
     * Records at the moment of the scan what is over, whatever rule it breaks.
     */
    void recordDone(String kind, ObjectNode body) {
        accept(Envelope.of(head(kind), body), Manner.TOLD);
    }

    /**
     * Sees whether something may begin that is recorded only when it is over: what this records is taken back.
     *
     * @throws dev.sunthread.kernel.Refused if a rule forbids it
     */
    void tries(String kind, ObjectNode body) {
        if (tries) {
            record(kind, body);
            tried = true;
        }
    }

    /** Whether what was recorded only was to see whether it may be done. */
    public boolean isTried() {
        return tried;
    }

    /** Records what the person said that a scanned text means. */
    public void chosen(ScanChoice choice) {
        accept(Envelope.of(head("scan-choice"), choice));
    }

    private EnvelopeHead head(String kind) {
        String id = entries.isEmpty() ? scan.id() : scan.id() + "." + (entries.size() + 1);
        return new EnvelopeHead(id, kind, 1, scan.at(), person, station);
    }

    /** The operation that the scan asks for, if it asks for one. */
    public void isAbout(@Nullable String asked) {
        this.operation = asked;
    }

    public @Nullable String operation() {
        return operation;
    }

    private void accept(Envelope envelope) {
        accept(envelope, scan.kept() ? Manner.TOLD : Manner.DO);
    }

    private void accept(Envelope envelope, Manner manner) {
        isAbout(
                envelope.head().kind().equals("step")
                        ? envelope.body().path("operation").asString(null)
                        : null);
        Acceptance accepted = door.accept(envelope, manner);
        entries.add(envelope.head().id());
        findings.addAll(accepted.findings());
    }

    public String station() {
        return station;
    }

    public String person() {
        return person;
    }

    /** Whether the scan tells what was done already, so that nothing can be asked any more. */
    boolean isTold() {
        return scan.kept();
    }

    public OffsetDateTime at() {
        return scan.at();
    }

    public String scanId() {
        return scan.id();
    }

    /** The ids of what was recorded. */
    public List<String> entries() {
        return List.copyOf(entries);
    }

    public List<RaisedFinding> findings() {
        return List.copyOf(findings);
    }
}
