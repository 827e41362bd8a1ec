package dev.sunthread.station.work;

import dev.sunthread.catalog.RouteStep;
import dev.sunthread.catalog.StructurePlace;
import dev.sunthread.production.UnitName;
import dev.sunthread.station.Say;
import dev.sunthread.station.label.Label;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import tools.jackson.databind.node.ArrayNode;

/** Operations on units: what a scan of a unit, a part or material does to the one in hand. */
@Component
class UnitWork {

    private final Wants wants;
    private final DoneWork done;

    UnitWork(Wants wants, DoneWork done) {
        this.wants = wants;
        this.done = done;
    }

    /** Takes a unit in hand for the operation that comes next on it here; a new one gets its serial with it. */
    Turn begin(Work work, Label.OfUnit unit, Recording recording) {
        List<RouteStep> left = wants.left(unit.name(), unit.isNew(), recording.at());
        Optional<RouteStep> next = Wants.next(left, recording.station());
        if (next.isEmpty()) {
            return Turn.refused(work, nothingHere(unit, left, recording), Say.of("unit.nothing-here.remedy"));
        }
        bear(unit, recording);
        Work begun = Work.on(Work.Task.UNITS).with(unit.name()).doing(next.get().operation(), recording.at());
        return goOn(
                begun,
                recording,
                Say.of("unit.in-hand", unit.called(), next.get().name()));
    }

    private Say nothingHere(Label.OfUnit unit, List<RouteStep> left, Recording recording) {
        List<RouteStep> here = unit.isNew() ? List.of() : done.here(unit.name(), recording);
        if (!here.isEmpty()) {
            return done.by(unit.name(), here.get(here.size() - 1), recording.at());
        }
        return left.isEmpty()
                ? Say.of("unit.route-done", unit.called())
                : Say.of("unit.nothing-here", unit.called(), left.get(0).name());
    }

    /** A unit that is put into the one in hand. */
    Turn putIn(Work work, Label.OfUnit child, Recording recording) {
        Optional<StructurePlace> place =
                want(work, recording).flatMap(want -> want.placeFor(child.name().item()));
        if (place.isEmpty()) {
            return noPlace(work, child);
        }
        UnitName parent = work.units().get(0);
        recording.record(
                "installation",
                Bodies.installation(child.name(), null, parent, place.get().position(), recording.station()));
        return goOn(
                work,
                recording,
                Say.of("part.put-in", child.called(), place.get().position(), parent.serial()));
    }

    /** Material or a part without a serial for the operation in hand. */
    Turn take(Work work, Label.OfMaterial material, Recording recording) {
        Optional<Want> want = want(work, recording);
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
            return goOn(
                    work,
                    recording,
                    Say.of("part.put-in", material.called(), place.get().position(), parent.serial()));
        }
        return goOn(work.with(taken), recording, Say.of("material.taken", material.called(), material.item()));
    }

    private static Turn noPlace(Work work, Label label) {
        return Turn.refused(
                work,
                Say.of("unit.does-not-take", work.units().get(0).serial(), label.called()),
                Say.of("unit.does-not-take.remedy"));
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
        bear(unit, recording);
        Work more = work.with(unit.name()).doing(operation, work.since() == null ? recording.at() : work.since());
        return Turn.accepted(more, "unit.collected", unit.called(), more.units().size());
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
        return goOn(together, recording, Say.of("several.in-hand", units.size()));
    }

    private static void bear(Label.OfUnit unit, Recording recording) {
        if (unit.isNew()) {
            recording.record("birth", Bodies.birth(unit.name(), recording.station()));
        }
    }

    private Optional<Want> want(Work work, Recording recording) {
        return wants.of(work, recording.station(), recording.at());
    }

    private Turn goOn(Work work, Recording recording, Say said) {
        Optional<Want> want = want(work, recording);
        if (want.isEmpty() || !want.get().isNothing()) {
            return Turn.accepted(work, said.key(), said.with().toArray());
        }
        Want complete = want.get();
        recording.record(
                "step",
                Bodies.step(
                        complete.step().operation(),
                        recording.station(),
                        work.units(),
                        recording.at().equals(work.since()) ? null : work.since(),
                        uses(work, complete)));
        return Turn.accepted(work.over(), "unit.done", complete.step().name(), called(work.units()));
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
