package dev.sunthread.journal.web;

import dev.sunthread.access.Caller;
import dev.sunthread.access.Callers;
import dev.sunthread.access.Needs;
import dev.sunthread.access.NotAllowed;
import dev.sunthread.access.Right;
import dev.sunthread.journal.Sender;
import dev.sunthread.ledger.Entries;
import dev.sunthread.ledger.Envelope;
import dev.sunthread.ledger.EnvelopeReader;
import dev.sunthread.ledger.Kinds;
import dev.sunthread.ledger.body.Unreadable;
import java.util.Objects;
import java.util.Optional;
import org.springframework.aop.support.AopUtils;
import org.springframework.core.annotation.AnnotatedElementUtils;
import org.springframework.stereotype.Component;

/** Makes envelopes that come over HTTP the caller's own words, if the caller may say such a thing at all. */
@Component
class Saying {

    private final Callers callers;
    private final Kinds kinds;
    private final Entries entries;

    Saying(Callers callers, Kinds kinds, Entries entries) {
        this.callers = callers;
        this.kinds = kinds;
        this.entries = entries;
    }

    /** The envelope with the caller as its actor. @throws NotAllowed if its kind needs a right that the caller lacks */
    Envelope said(Envelope envelope) {
        callers.require(needed(envelope));
        return envelope.saidBy(callers.signedIn().mark());
    }

    /**
     * The caller as one who tells what was done: in own words, but for the token of a station, which tells what persons did
     * there.
     *
     * @throws NotAllowed if the line can be read and its kind needs a right that the caller lacks
     */
    Sender teller(String line, String address) {
        readable(line).ifPresent(envelope -> callers.require(needed(envelope)));
        Caller caller = callers.signedIn();
        return new Sender(caller.mark(), address, caller.isPerson() || caller.station() == null);
    }

    private static Optional<Envelope> readable(String line) {
        try {
            return Optional.of(EnvelopeReader.read(line));
        } catch (Unreadable e) {
            return Optional.empty();
        }
    }

    /** What takes an entry back or tells it anew needs what the entry needed. */
    private Right needed(Envelope envelope) {
        String kind = envelope.head().kind();
        String target = envelope.body().path("entry").asString("");
        return kind.equals("void") || kind.equals("correction")
                ? entries.named(target).map(entry -> needed(entry.kind())).orElse(Right.WORK)
                : needed(kind);
    }

    private Right needed(String kind) {
        return kinds.all().stream()
                .filter(one -> one.name().equals(kind))
                .map(one -> AnnotatedElementUtils.findMergedAnnotation(AopUtils.getTargetClass(one), Needs.class))
                .filter(Objects::nonNull)
                .findFirst()
                .map(Needs::value)
                .orElse(Right.WORK);
    }
}
