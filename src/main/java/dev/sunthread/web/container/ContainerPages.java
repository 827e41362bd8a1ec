package dev.sunthread.web.container;

import dev.sunthread.inbox.Findings;
import dev.sunthread.kernel.Table;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.materials.stock.ContainerStates;
import dev.sunthread.production.balance.Balances;
import dev.sunthread.web.unit.UnitTables;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** Gathers what several modules know of one container at a cut-off. */
@Service
class ContainerPages {

    private final ContainerStates states;
    private final Findings findings;
    private final Balances balances;
    private final ContainerReading reading;
    private final Clock clock;

    ContainerPages(
            ContainerStates states, Findings findings, Balances balances, ContainerReading reading, Clock clock) {
        this.states = states;
        this.findings = findings;
        this.balances = balances;
        this.reading = reading;
        this.clock = clock;
    }

    ContainerPage read(long container, @Nullable Integer happenings, long cutoff) {
        return new ContainerPage(
                states.of(container, OffsetDateTime.now(clock), cutoff),
                reading.lots(container, cutoff),
                findings.touching(List.of(TraceRef.container(container)), cutoff),
                balances.ofContainer(container, cutoff),
                reading.timeline(container, happenings, cutoff));
    }

    List<Table<?>> tables(long container, long cutoff) {
        return List.of(UnitTables.happenings("happenings", () -> reading.all(container, cutoff)));
    }
}
