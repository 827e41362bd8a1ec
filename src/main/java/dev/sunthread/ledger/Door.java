package dev.sunthread.ledger;

import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.body.Shape;
import dev.sunthread.ledger.body.Unreadable;
import jakarta.persistence.EntityManager;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.dao.NonTransientDataAccessException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * The one way in: every page, station, interface, journal and demo hands its envelopes here. One envelope is one ledger
 * entry in one transaction with all that it fills; an id sent twice changes nothing.
 */
@Service
public class Door {

    private final Kinds kinds;
    private final Entries entries;
    private final RestoredEntries restored;
    private final SoleWriter sole;
    private final ApplicationEventPublisher events;
    private final EntityManager entities;
    private final RecordedNow now;
    private final EntryAtHand atHand;
    private final Ahead ahead;

    Door(
            Kinds kinds,
            Entries entries,
            RestoredEntries restored,
            SoleWriter sole,
            ApplicationEventPublisher events,
            EntityManager entities,
            RecordedNow now,
            EntryAtHand atHand,
            Ahead ahead) {
        this.kinds = kinds;
        this.entries = entries;
        this.restored = restored;
        this.sole = sole;
        this.events = events;
        this.entities = entities;
        this.now = now;
        this.atHand = atHand;
        this.ahead = ahead;
    }

    /**
     * Records an envelope, or says that it was recorded before.
     *
     * @throws Unreadable if its body can't be read or names something unknown
     * @throws Refused if it asks for something that a rule forbids
     */
    @Transactional
    public Acceptance accept(Envelope envelope, Manner manner) {
        return accept(envelope, manner, now.stamp());
    }

    /**
     * Records an envelope as part of the caller's transaction; what it refuses takes back no more than this envelope.
     *
     * @throws Refused as {@link #accept} does, and the caller's transaction can go on
     */
    @Transactional(
            propagation = Propagation.MANDATORY,
            noRollbackFor = {Refused.class, NonTransientDataAccessException.class})
    public Acceptance acceptWithin(Envelope envelope, Manner manner) {
        entries.mark();
        try {
            Acceptance accepted = accept(envelope, manner);
            entries.unmark();
            return accepted;
        } catch (Refused | NonTransientDataAccessException e) {
            entries.takeBackToMark();
            // what was looked up since the mark may be gone with it
            entities.clear();
            throw e;
        }
    }

    /**
     * Begins to record another database's export in the caller's transaction, while nobody else records.
     *
     * @throws Refused if anything was recorded yet
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public Restoration restoration() {
        sole.begin();
        if (!entries.none()) {
            throw new Refused(
                    "The database holds records already", "Restore into an empty database, or import instead");
        }
        restored.expectMany();
        return new Restoration(this::restore, restored);
    }

    private void restore(Envelope envelope, long entry, OffsetDateTime recordedAt) {
        restore(kinds.get(envelope.head().kind(), envelope.head().version()), envelope, entry, recordedAt);
    }

    private <B> void restore(Kind<B> kind, Envelope envelope, long entry, OffsetDateTime recordedAt) {
        B body = Shape.of(kind.body()).read(envelope.body(), "body");
        record(kind, new Fact<>(entry, envelope.head(), envelope.occurredAt(), body, Manner.TOLD), recordedAt);
    }

    private Acceptance accept(Envelope envelope, Manner manner, Recorded recorded) {
        Optional<EntryAccepted> entered = entered(envelope, manner, recorded);
        if (entered.isEmpty()) {
            return knownBefore(envelope);
        }
        entries.close(entered.get().entry());
        return new Acceptance(envelope.id(), true, entered.get().findings());
    }

    /** Opens an entry and fills it; nothing if the envelope's id is known. */
    private Optional<EntryAccepted> entered(Envelope envelope, Manner manner, Recorded recorded) {
        return entered(kinds.get(envelope.head().kind(), envelope.head().version()), envelope, manner, recorded);
    }

    private <B> Optional<EntryAccepted> entered(Kind<B> kind, Envelope envelope, Manner manner, Recorded recorded) {
        B body = Shape.of(kind.body()).read(envelope.body(), "body");
        return entries.open(envelope, recorded)
                .map(entry -> new EntryAccepted(
                        entry,
                        record(
                                kind,
                                new Fact<>(entry, envelope.head(), envelope.occurredAt(), body, manner),
                                recorded.at())));
    }

    private <B> List<RaisedFinding> record(Kind<B> kind, Fact<B> fact, OffsetDateTime recordedAt) {
        atHand.whileRecording(fact.entry(), () -> {
            kind.record(fact);
            ahead.happeningIsNotInTheFuture(kind, fact, recordedAt);
            entities.flush();
        });
        if (!fact.findings().isEmpty()) {
            events.publishEvent(new EntryAccepted(fact.entry(), fact.findings()));
        }
        return fact.findings();
    }

    private Acceptance knownBefore(Envelope envelope) {
        if (!entries.holds(envelope)) {
            throw Unreadable.at(
                    "envelope.id",
                    "\"" + envelope.id() + "\" was recorded before with other content",
                    "Give a new happening a new id; to change what was recorded send a correction");
        }
        return new Acceptance(envelope.id(), false, List.of());
    }
}
