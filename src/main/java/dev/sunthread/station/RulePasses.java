package dev.sunthread.station;

import dev.sunthread.access.Caller;
import dev.sunthread.access.Right;
import dev.sunthread.access.Signing;
import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Envelope;
import dev.sunthread.ledger.EnvelopeHead;
import dev.sunthread.ledger.Manner;
import dev.sunthread.station.pass.Passing;
import dev.sunthread.station.work.Bodies;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.UUID;
import org.springframework.stereotype.Service;

/** Lets a person who may judge sign at a station that a rule is passed; then the scan that it refused is taken again. */
@Service
public class RulePasses {

    /**
     * A signature.
     *
     * @param badge as it was scanned
     * @param why the reason
     */
    public record Signature(String badge, String pin, String why) {}

    private final Bench bench;
    private final TakenScans scans;
    private final Signing signing;
    private final Door door;
    private final Clock clock;

    RulePasses(Bench bench, TakenScans scans, Signing signing, Door door, Clock clock) {
        this.bench = bench;
        this.scans = scans;
        this.signing = signing;
        this.door = door;
        this.clock = clock;
    }

    /** Signs for what the page of this person at this station asks about, and takes its scan again. */
    public Verdict sign(String station, String person, Signature signature) {
        Passing passing = scans.last(station, person)
                .map(last -> last.verdict().passing())
                .filter(Passing::isAsked)
                .orElse(null);
        if (passing == null) {
            return said(station, person, Verdict.refused(Say.of("pass.nothing"), Say.of("pass.nothing.remedy")));
        }
        try {
            return signed(station, person, signature, passing);
        } catch (Refused refused) {
            return said(
                    station,
                    person,
                    Verdict.refused(Say.why(refused), Say.words(refused.remedy()))
                            .with(passing));
        }
    }

    private Verdict signed(String station, String person, Signature signature, Passing passing) {
        Caller signer = signing.prove(signature.badge(), signature.pin(), station);
        if (!signer.may(Right.JUDGE)) {
            Say why = Say.of("pass.not-allowed", signer.mark());
            return said(
                    station,
                    person,
                    Verdict.refused(why, Say.of("pass.not-allowed.remedy")).with(passing));
        }
        if (signature.why().isBlank()) {
            Say why = Say.of("pass.no-reason");
            return said(
                    station,
                    person,
                    Verdict.refused(why, Say.of("pass.no-reason.remedy")).with(passing));
        }
        OffsetDateTime now = OffsetDateTime.now(clock);
        EnvelopeHead head = new EnvelopeHead("pass-" + UUID.randomUUID(), "rule-pass", 1, now, signer.mark(), station);
        door.accept(Envelope.of(head, Bodies.rulePass(passing, signature.why().strip())), Manner.DO);
        return bench.scan(station, person, scan(passing.scan()));
    }

    private Scan scan(String text) {
        return new Scan(UUID.randomUUID().toString(), text, OffsetDateTime.now(clock), false);
    }

    private Verdict said(String station, String person, Verdict verdict) {
        scans.keep(station, person, scan(".pass"), verdict);
        return verdict;
    }
}
