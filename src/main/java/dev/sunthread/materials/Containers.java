package dev.sunthread.materials;

import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.EntryAtHand;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Known;
import dev.sunthread.ledger.Remembered;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Container labels. A label that is named before a filling is known from then on, so that nothing recorded is lost. */
@Repository
public class Containers {

    private final Remembered remembered;
    private final EntryAtHand atHand;
    private final JdbcClient jdbc;

    Containers(Remembered remembered, EntryAtHand atHand, JdbcClient jdbc) {
        this.atHand = atHand;
        this.remembered = remembered;
        this.jdbc = jdbc;
    }

    /** The internal number of a container, known from now on. */
    public long known(String label) {
        return remembered.<String, Long>of("container").computeIfAbsent(label, this::knownFromNow);
    }

    private long knownFromNow(String label) {
        Optional<Long> id = find(label);
        if (id.isPresent()) {
            return id.get();
        }
        jdbc.sql("INSERT INTO materials.container (label, named_by) VALUES (?, ?) ON CONFLICT (label) DO NOTHING")
                .params(label, atHand.number())
                .update();
        return find(label).orElseThrow();
    }

    public Optional<Long> find(String label) {
        return jdbc.sql("SELECT id FROM materials.container WHERE label = ?")
                .param(label)
                .query(Long.class)
                .optional();
    }

    /** The label of a container. */
    public String label(long container) {
        return jdbc.sql("SELECT label FROM materials.container WHERE id = ?")
                .param(container)
                .query(String.class)
                .single();
    }

    /** The lot that was last filled into a container; empty if none is recorded. */
    public Optional<Long> lotIn(long container) {
        return held(container).stream().findFirst();
    }

    /** The internal number of a container that something of a lot came from or went to; absent if none is named. */
    public @Nullable Long ofLot(Fact<?> fact, @Nullable String label, String number, long lot) {
        if (label == null) {
            return null;
        }
        long container = known(label);
        containerHoldsTheLot(fact, label, container, number, lot);
        return container;
    }

    private void containerHoldsTheLot(Fact<?> fact, String label, long container, String number, long lot) {
        List<Long> held = held(container);
        if (!held.isEmpty() && !held.contains(lot)) {
            fact.breaks(
                    "container-holds-the-lot",
                    "Container " + label + " is recorded as filled with another lot than " + number,
                    "Find out which lot it was: correct lot or label, or record the filling that was missed",
                    TraceRef.container(container),
                    TraceRef.lot(lot),
                    TraceRef.lot(held.get(0)));
        }
    }

    /** The internal number of a container that something is done with, whatever it holds. */
    public long filled(Fact<?> fact, String label) {
        long container = known(label);
        if (held(container).isEmpty()) {
            fact.breaks(
                    "container-is-filled",
                    "Nothing is recorded as filled into container " + label,
                    "Record its filling, or correct the label",
                    TraceRef.container(container));
        }
        return container;
    }

    /** The lots that were ever filled into a container, the latest filling first. */
    private List<Long> held(long container) {
        return jdbc.sql("SELECT f.lot FROM materials.container_filling f WHERE f.container = ? AND "
                        + Known.now("f.entry") + " ORDER BY f.entry DESC")
                .param(container)
                .query((row, number) -> row.getLong(1))
                .list();
    }
}
