package dev.sunthread.station.work;

import dev.sunthread.catalog.RouteStep;
import dev.sunthread.catalog.StructurePlace;
import dev.sunthread.production.UnitName;
import dev.sunthread.station.Say;
import dev.sunthread.station.label.Label;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** Operations on units: what a scan of a unit, a part or material does to the one in hand. */
@Component
class UnitWork {

    private final Wants wants;
    private final StepWork steps;
    private final DoneWork done;

    UnitWork(Wants wants, StepWork steps, DoneWork done) {
        this.wants = wants;
        this.steps = steps;
        this.done = done;
    }

    /** Takes a unit in hand for the operation that comes next on it here; a new one gets its serial with it. */
    Turn begin(Work work, Label.OfUnit unit, Recording recording) {
        List<RouteStep> left = wants.left(unit.name(), unit.isNew(), recording.at());
        Optional<RouteStep> next = Wants.next(left, recording.station());
        if (next.isEmpty()) {
            return nothingHere(work, unit, left, recording);
        }
        StepWork.bear(unit, recording);
        Work begun = Work.on(Work.Task.UNITS).with(unit.name()).doing(next.get().operation(), recording.at());
        Turn turn = steps.begin(
                begun,
                recording,
                Say.of("unit.in-hand", unit.called(), next.get().name()));
        return unit.isNew() ? turn.noting(isNew(unit)) : turn;
    }

    static Say isNew(Label.OfUnit unit) {
        return Say.of("unit.new", unit.called(), unit.name().item());
    }

    private Turn nothingHere(Work work, Label.OfUnit unit, List<RouteStep> left, Recording recording) {
        List<RouteStep> here = unit.isNew() ? List.of() : done.here(unit.name(), recording);
        if (!here.isEmpty()) {
            Say already = done.by(unit.name(), here.get(here.size() - 1), recording.at());
            return Turn.refused(work, already, Say.of("unit.done-already.remedy"));
        }
        return Turn.refused(
                work,
                left.isEmpty()
                        ? Say.of("unit.route-done", unit.called())
                        : Say.of("unit.nothing-here", unit.called(), left.get(0).name()),
                Say.of("unit.nothing-here.remedy"));
    }

    /** A unit that is put into the one in hand. */
    Turn putIn(Work work, Label.OfUnit child, Recording recording) {
        Optional<StructurePlace> place = steps.want(work, recording)
                .flatMap(want -> want.placeFor(child.name().item()));
        if (place.isEmpty()) {
            return noPlace(work, child);
        }
        UnitName parent = work.units().get(0);
        recording.record(
                "installation",
                Bodies.installation(child.name(), null, parent, place.get().position(), recording.station()));
        return steps.goOn(
                work,
                recording,
                Say.of("part.put-in", child.called(), place.get().position(), parent.serial()));
    }

    /** Material or a part without a serial for the operation in hand. */
    Turn take(Work work, Label.OfMaterial material, Recording recording) {
        Optional<Want> want = steps.want(work, recording);
        if (want.isEmpty() || material.item() == null || !want.get().takes(material.item())) {
            return noPlace(work, material);
        }
        Work.Taken taken = new Work.Taken(material.item(), material.lot(), material.container());
        Optional<StructurePlace> place = want.get().placeFor(material.item());
        if (place.isPresent()) {
            UnitName parent = work.units().get(0);
            recording.record(
                    "installation",
                    Bodies.installation(null, taken, parent, place.get().position(), recording.station()));
            return steps.goOn(
                    work,
                    recording,
                    Say.of("part.put-in", material.called(), place.get().position(), parent.serial()));
        }
        return steps.begin(work.with(taken), recording, Say.of("material.taken", material.called(), material.item()));
    }

    private static Turn noPlace(Work work, Label label) {
        return Turn.refused(
                work,
                Say.of("unit.does-not-take", work.units().get(0).serial(), label.called()),
                Say.of("unit.does-not-take.remedy"));
    }
}
