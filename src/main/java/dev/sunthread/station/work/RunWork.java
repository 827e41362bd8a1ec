package dev.sunthread.station.work;

import dev.sunthread.production.UnitName;
import dev.sunthread.station.Say;
import dev.sunthread.station.label.Label;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** A load of an oven, a lamp or a room: what goes in, when it begins, when it is over. */
@Component
class RunWork {

    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss");

    private final StationRoutes routes;

    RunWork(StationRoutes routes) {
        this.routes = routes;
    }

    Turn begin(Label.OfEquipment equipment) {
        return Turn.accepted(Work.on(Work.Task.RUN).named(equipment.code()), "run.load", equipment.code());
    }

    Turn put(Work work, Label.OfCarrier carrier) {
        if (work.since() != null || work.carriers().contains(carrier.code())) {
            return noMore(work, carrier);
        }
        Work more = work.withCarrier(carrier.code());
        return Turn.accepted(
                more,
                "run.loaded",
                carrier.code(),
                routes.on(carrier.code()).size(),
                more.carriers().size() + more.units().size());
    }

    Turn put(Work work, Label.OfUnit unit) {
        if (work.since() != null || work.units().contains(unit.name())) {
            return noMore(work, unit);
        }
        Work more = work.with(unit.name());
        return Turn.accepted(
                more,
                "run.loaded",
                unit.called(),
                1,
                more.carriers().size() + more.units().size());
    }

    private static Turn noMore(Work work, Label label) {
        return work.since() == null
                ? Turn.refused(work, Say.of("unit.twice", label.called()), Say.of("unit.twice.remedy"))
                : Turn.refused(work, Say.of("run.closed", work.called()), Say.of("run.closed.remedy"));
    }

    /** The load is complete and the run begins, if nothing forbids it; what happens until its end refuses it no more. */
    Turn start(Work work, Recording recording) {
        if (work.carriers().isEmpty() && work.units().isEmpty()) {
            return Turn.refused(work, Say.of("run.empty", work.called()), Say.of("run.empty.remedy"));
        }
        Set<String> recipes = recipes(work, recording.at());
        if (recipes.size() != 1) {
            return Turn.refused(
                    work,
                    Say.of("run.recipes", work.called(), recipes.isEmpty() ? "-" : String.join(", ", recipes)),
                    Say.of("run.recipes.remedy"));
        }
        String recipe = recipes.iterator().next();
        recording.tries("cure-run", Bodies.cureRun(work, number(work, recording.at()), recipe, recording.at()));
        return Turn.accepted(work.doing(recipe, recording.at()), "run.begun", work.called(), recipe);
    }

    /** The run is over, and recorded whatever came to light while it ran. */
    Turn end(Work work, Recording recording) {
        if (work.since() == null) {
            return Turn.refused(work, Say.of("run.not-begun", work.called()), Say.of("run.not-begun.remedy"));
        }
        String run = number(work, work.since());
        recording.recordDone(
                "cure-run", Bodies.cureRun(work, run, Objects.requireNonNull(work.operation()), work.since()));
        return Turn.accepted(work.over(), "run.over", run);
    }

    private static String number(Work work, OffsetDateTime since) {
        return work.called() + "-" + STAMP.format(since);
    }

    private Set<String> recipes(Work work, OffsetDateTime at) {
        Set<String> items = work.units().stream().map(UnitName::item).collect(Collectors.toCollection(TreeSet::new));
        work.carriers().forEach(carrier -> routes.on(carrier).forEach(unit -> items.add(unit.item())));
        return routes.recipes(items, at);
    }
}
