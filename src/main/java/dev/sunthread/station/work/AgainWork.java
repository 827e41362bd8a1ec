package dev.sunthread.station.work;

import dev.sunthread.catalog.RouteStep;
import dev.sunthread.production.Repeats;
import dev.sunthread.station.Say;
import dev.sunthread.station.Verdict;
import dev.sunthread.station.label.Label;
import dev.sunthread.station.label.ScannedLabels;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** An operation that is done on a unit already is done again, if somebody who may judge signed for it. */
@Component
class AgainWork {

    private final DoneWork done;
    private final Repeats repeats;
    private final StepWork steps;

    AgainWork(DoneWork done, Repeats repeats, StepWork steps) {
        this.done = done;
        this.repeats = repeats;
        this.steps = steps;
    }

    Turn begin() {
        return Turn.accepted(Work.on(Work.Task.AGAIN), "again.begin");
    }

    /** A unit was scanned: the operations that are done on it here are offered. */
    Turn on(Label.OfUnit unit, Recording recording) {
        List<RouteStep> here = unit.isNew() ? List.of() : done.here(unit.name(), recording);
        if (here.isEmpty()) {
            return Turn.refused(
                    Work.on(Work.Task.AGAIN), Say.of("again.none", unit.called()), Say.of("again.none.remedy"));
        }
        List<Verdict.Choice> choices = here.stream()
                .map(step -> new Verdict.Choice(
                        ScannedLabels.AGAIN + step.operation(), Say.of("again.operation", step.name())))
                .toList();
        return new Turn(
                Work.on(Work.Task.AGAIN).with(unit.name()),
                Verdict.asked(Say.of("again.which", unit.called()), choices));
    }

    /** The operation was chosen: it is in hand, if it is signed for. */
    Turn chosen(Work work, Label.OfOperation chosen, Recording recording) {
        Optional<RouteStep> step = work.units().stream()
                .flatMap(unit -> done.here(unit, recording).stream())
                .filter(one -> one.operation().equals(chosen.operation()))
                .findFirst();
        if (step.isEmpty()) {
            return Turn.refused(work, Say.of("again.not-this", chosen.called()), Say.of("again.none.remedy"));
        }
        var unit = work.units().get(0);
        recording.isAbout(chosen.operation());
        repeats.mayBeDoneAgain(unit, chosen.operation(), recording.at());
        Work begun = Work.on(Work.Task.UNITS).with(unit).doing(chosen.operation(), recording.at());
        return steps.begin(
                begun,
                recording,
                Say.of("again.in-hand", unit.serial(), step.get().name()));
    }
}
