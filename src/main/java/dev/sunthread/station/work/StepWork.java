package dev.sunthread.station.work;

import dev.sunthread.production.UnitName;
import dev.sunthread.station.Say;
import dev.sunthread.station.label.Label;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** An operation in hand: what it still wants, and the step that is recorded as soon as that is nothing. */
@Component
class StepWork {

    private final Wants wants;

    StepWork(Wants wants) {
        this.wants = wants;
    }

    /** A new unit gets its serial. */
    static void bear(Label.OfUnit unit, Recording recording) {
        if (unit.isNew()) {
            recording.record("birth", Bodies.birth(unit.name(), recording.station()));
        }
    }

    Optional<Want> want(Work work, Recording recording) {
        return wants.of(work, recording.station(), recording.at());
    }

    /** The same of a scan that an operation begins with: what forbids it is said now, not once all is there. */
    Turn begin(Work work, Recording recording, Say said) {
        tries(work, recording);
        return goOn(work, recording, said);
    }

    /** Sees whether the operation in hand may be done with what is there so far. */
    void tries(Work work, Recording recording) {
        want(work, recording)
                .filter(want -> !want.isNothing())
                .ifPresent(want -> recording.tries("step", step(work, want, recording)));
    }

    /** Records the step if nothing is missing to it; else says what came of the scan. */
    Turn goOn(Work work, Recording recording, Say said) {
        Optional<Want> want = want(work, recording);
        if (want.isEmpty() || !want.get().isNothing()) {
            return Turn.accepted(work, said.key(), said.with().toArray());
        }
        Want complete = want.get();
        recording.record("step", step(work, complete, recording));
        return Turn.accepted(work.over(), "unit.done", complete.step().name(), called(work.units()));
    }

    private static ObjectNode step(Work work, Want want, Recording recording) {
        return Bodies.step(
                want.step().operation(),
                recording.station(),
                work.units(),
                recording.at().equals(work.since()) ? null : work.since(),
                uses(work, want));
    }

    private static String called(List<UnitName> units) {
        return units.size() == 1
                ? units.get(0).serial()
                : units.get(0).serial() + " … " + units.get(units.size() - 1).serial() + " (" + units.size() + ")";
    }

    private static ArrayNode uses(Work work, Want want) {
        ArrayNode uses = Bodies.list();
        work.taken().forEach(taken -> uses.add(Bodies.useOfScanned(taken)));
        want.supplied().forEach((position, item) -> uses.add(Bodies.useOfLoaded(item, position)));
        return uses;
    }
}
