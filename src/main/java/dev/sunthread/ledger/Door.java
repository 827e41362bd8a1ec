package dev.sunthread.ledger;

import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.body.Shape;
import dev.sunthread.ledger.body.Unreadable;
import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
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

    /** What an entry gets besides its content; a position only if it had one before. */
    private record Stamp(
            OffsetDateTime recordedAt, @Nullable Long position) {}

    private final Kinds kinds;
    private final Entries entries;
    private final ApplicationEventPublisher events;
    private final EntityManager entities;
    private final Clock clock;

    Door(Kinds kinds, Entries entries, ApplicationEventPublisher events, EntityManager entities, Clock clock) {
        this.kinds = kinds;
        this.entries = entries;
        this.events = events;
        this.entities = entities;
        this.clock = clock;
    }

    /**
     * Records an envelope, or says that it was recorded before.
     *
     * @throws Unreadable if its body can't be read or names something unknown
     * @throws Refused if it asks for something that a rule forbids
     */
    @Transactional
    public Acceptance accept(Envelope envelope, Manner manner) {
        return accept(envelope, manner, OffsetDateTime.now(clock), null);
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

    /** Records an envelope of another database's export, keeping when it was recorded and its position. */
    @Transactional
    public Acceptance restore(Envelope envelope, OffsetDateTime recordedAt, long position) {
        return accept(envelope, Manner.TOLD, recordedAt, position);
    }

    private Acceptance accept(Envelope envelope, Manner manner, OffsetDateTime recordedAt, @Nullable Long position) {
        Kind<?> kind = kinds.get(envelope.head().kind(), envelope.head().version());
        return accept(kind, envelope, manner, new Stamp(recordedAt, position));
    }

    private <B> Acceptance accept(Kind<B> kind, Envelope envelope, Manner manner, Stamp stamp) {
        B body = Shape.of(kind.body()).read(envelope.body(), "body");
        Optional<Long> entry = entries.open(envelope, stamp.recordedAt());
        if (entry.isEmpty()) {
            return knownBefore(envelope);
        }
        List<RaisedFinding> findings =
                record(kind, new Fact<>(entry.get(), envelope.head(), envelope.occurredAt(), body, manner));
        entries.close(entry.get(), stamp.position());
        return new Acceptance(envelope.id(), true, findings);
    }

    private <B> List<RaisedFinding> record(Kind<B> kind, Fact<B> fact) {
        kind.record(fact);
        entities.flush();
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
