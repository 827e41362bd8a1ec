package dev.sunthread.station.work;

import dev.sunthread.catalog.RouteStep;
import dev.sunthread.production.UnitName;
import dev.sunthread.station.Say;
import dev.sunthread.station.label.Label;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** One operation done on several units together, collected one by one or taken from a carrier. */
@Component
class SeveralWork {

    private final Wants wants;
    private final StepWork steps;

    SeveralWork(Wants wants, StepWork steps) {
        this.wants = wants;
        this.steps = steps;
    }

    /** Collects a unit for an operation that is done on several together. */
    Turn collect(Work work, Label.OfUnit unit, Recording recording) {
        if (work.units().contains(unit.name())) {
            return Turn.refused(work, Say.of("unit.twice", unit.called()), Say.of("unit.twice.remedy"));
        }
        Optional<RouteStep> next =
                Wants.next(wants.left(unit.name(), unit.isNew(), recording.at()), recording.station());
        String operation = next.map(RouteStep::operation).orElse("");
        if (next.isEmpty() || work.operation() != null && !operation.equals(work.operation())) {
            return Turn.refused(
                    work,
                    Say.of(
                            "unit.other-operation",
                            unit.called(),
                            next.map(RouteStep::name).orElse("-")),
                    Say.of("unit.other-operation.remedy"));
        }
        StepWork.bear(unit, recording);
        steps.tries(Work.on(Work.Task.UNITS).with(unit.name()).doing(operation, recording.at()), recording);
        Work more = work.with(unit.name()).doing(operation, work.since() == null ? recording.at() : work.since());
        Turn turn = Turn.accepted(
                more, "unit.collected", unit.called(), more.units().size());
        return unit.isNew() ? turn.noting(UnitWork.isNew(unit)) : turn;
    }

    /** The units are complete: the operation is done on all of them as soon as its material is there. */
    Turn collected(Work work, Recording recording) {
        if (work.units().isEmpty()) {
            return Turn.refused(work, Say.of("several.none"), Say.of("several.none.remedy"));
        }
        return allAtOnce(work.units(), work, recording);
    }

    /** Takes all units of a carrier in hand together. */
    Turn allAtOnce(List<UnitName> units, Work begun, Recording recording) {
        Work work = Work.on(Work.Task.UNITS);
        for (UnitName unit : units) {
            work = work.with(unit);
        }
        Work together = work.doing(begun.operation(), begun.since() == null ? recording.at() : begun.since());
        return steps.begin(together, recording, Say.of("several.in-hand", units.size()));
    }
}
