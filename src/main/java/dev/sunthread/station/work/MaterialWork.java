package dev.sunthread.station.work;

import dev.sunthread.scan.label.LabelCode;
import dev.sunthread.station.Say;
import dev.sunthread.station.Verdict;
import dev.sunthread.station.label.Label;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** Loading material at positions, taking it off, and purging. */
@Component
class MaterialWork {

    private final StationLoads loads;
    private final LoadablePositions positions;

    MaterialWork(StationLoads loads, LoadablePositions positions) {
        this.loads = loads;
        this.positions = positions;
    }

    /** Material was scanned with no work in hand: its position comes next, also where the station has only one. */
    Turn begin(Work work, Label.OfMaterial material, Recording recording) {
        Optional<Loaded> held = loads.at(recording.station()).stream()
                .filter(loaded -> loaded.hold() != null && loaded.lot().equals(material.lot()))
                .findFirst();
        if (held.isPresent()) {
            return takenOff(work, held.get().position(), recording);
        }
        if (positions.all(recording.station()).isEmpty()) {
            return Turn.refused(
                    work, Say.of("material.no-position", recording.station()), Say.of("material.no-position.remedy"));
        }
        List<String> taking = taking(material, recording);
        return taking.isEmpty()
                ? Turn.refused(
                        work,
                        Say.of("material.not-taken", material.called(), item(material), recording.station()),
                        Say.of("material.not-taken.remedy"))
                : inHand(material, taking, recording);
    }

    /** The positions that take it; of what was done already all, for nobody can be sent elsewhere any more. */
    private List<String> taking(Label.OfMaterial material, Recording recording) {
        return recording.isTold()
                ? positions.all(recording.station())
                : positions.taking(item(material), recording.station(), recording.at());
    }

    // whether it may be loaded is said now, not once its position is there
    private Turn inHand(Label.OfMaterial material, List<String> taking, Recording recording) {
        String position = taking.get(0);
        loadedAt(position, recording)
                .ifPresent(loaded ->
                        recording.tries("discharge", Bodies.discharge(recording.station(), position, loaded.lot())));
        recording.tries("charge", Bodies.charge(recording.station(), position, material.lot(), material.container()));
        return new Turn(
                Work.on(Work.Task.MATERIAL).with(taken(material)),
                Verdict.accepted(
                        Say.of("material.which-position", material.called()),
                        taking.stream()
                                .map(one -> new Verdict.Choice(
                                        LabelCode.position(recording.station(), one), Say.of("which.position", one)))
                                .toList()));
    }

    private static String item(Label.OfMaterial material) {
        return material.item() == null ? "" : material.item();
    }

    private static Work.Taken taken(Label.OfMaterial material) {
        return new Work.Taken(item(material), material.lot(), material.container());
    }

    /** The position for the material in hand. */
    Turn loadAt(Work work, Label.OfPosition position, Recording recording) {
        return isHere(position, recording) ? load(work, position.code(), recording) : elsewhere(work, position);
    }

    // what was there before came off with it: nothing can be in its place while it is
    private Turn load(Work work, String position, Recording recording) {
        Work.Taken material = work.taken().get(0);
        Optional<Loaded> before = loadedAt(position, recording);
        before.ifPresent(
                loaded -> recording.record("discharge", Bodies.discharge(recording.station(), position, loaded.lot())));
        recording.record("charge", Bodies.charge(recording.station(), position, material.lot(), material.container()));
        String called = Objects.requireNonNullElse(material.container(), material.lot());
        return before.isPresent()
                ? Turn.accepted(
                        work.over(),
                        "material.replaced",
                        called,
                        position,
                        before.get().lot())
                : Turn.accepted(work.over(), "material.loaded", called, position);
    }

    /** A position was scanned with no work in hand. */
    Turn at(Work work, Label.OfPosition position, Recording recording) {
        if (!isHere(position, recording)) {
            return elsewhere(work, position);
        }
        Work in = Work.on(Work.Task.POSITION).at(position.code());
        return loadedAt(position.code(), recording)
                .map(loaded -> loaded.hold() == null
                        ? Turn.accepted(in, holds(loaded, recording), position.code(), loaded.lot())
                        : takenOff(work, position.code(), recording))
                .orElseGet(() -> Turn.accepted(in, "position.empty", position.code()));
    }

    private static String holds(Loaded loaded, Recording recording) {
        boolean expired = loaded.expiresAt() != null && !recording.at().isBefore(loaded.expiresAt());
        return expired ? "position.holds-expired" : "position.holds";
    }

    /** Material for the position in hand. */
    Turn put(Work work, Label.OfMaterial material, Recording recording) {
        return load(work.with(taken(material)), Objects.requireNonNull(work.position()), recording);
    }

    /** What is loaded at the position in hand was taken off. */
    Turn off(Work work, Recording recording) {
        return takenOff(work, Objects.requireNonNull(work.position()), recording);
    }

    private Turn takenOff(Work work, String position, Recording recording) {
        Optional<Loaded> loaded = loadedAt(position, recording);
        if (loaded.isEmpty()) {
            return Turn.refused(work.over(), Say.of("position.empty", position), Say.of("position.empty.remedy"));
        }
        recording.record(
                "discharge",
                Bodies.discharge(recording.station(), position, loaded.get().lot()));
        return loaded.get().hold() == null
                ? Turn.accepted(work.over(), "material.off", loaded.get().lot(), position)
                : Turn.accepted(
                        work.over(), "material.off-to-hold", loaded.get().lot(), position);
    }

    /** The position in hand was purged and checked. */
    Turn clean(Work work, Recording recording) {
        String position = Objects.requireNonNull(work.position());
        recording.record(
                "clean-point",
                Bodies.cleanPoint(
                        recording.station(),
                        position,
                        "Purged and checked, said at the station by scan " + recording.scanId()));
        return Turn.accepted(work.over(), "position.clean", position);
    }

    private Optional<Loaded> loadedAt(String position, Recording recording) {
        return loads.at(recording.station()).stream()
                .filter(loaded -> loaded.position().equals(position))
                .findFirst();
    }

    private static boolean isHere(Label.OfPosition position, Recording recording) {
        return position.station().equals(recording.station());
    }

    private static Turn elsewhere(Work work, Label.OfPosition position) {
        return Turn.refused(work, Say.of("position.elsewhere", position.called()), Say.of("position.elsewhere.remedy"));
    }
}
