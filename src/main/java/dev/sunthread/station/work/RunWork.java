package dev.sunthread.station.work;

import dev.sunthread.production.UnitName;
import dev.sunthread.station.Say;
import dev.sunthread.station.Verdict;
import dev.sunthread.station.label.Command;
import dev.sunthread.station.label.Label;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/** A load of an oven, a lamp or a room: what goes in, when it begins, when it is over. */
@Component
class RunWork {

    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss");

    private final StationRoutes routes;
    private final Duration shortest;

    RunWork(StationRoutes routes, @Value("${sunthread.station.shortest-run:1m}") Duration shortest) {
        this.routes = routes;
        this.shortest = shortest;
    }

    Turn begin(Label.OfEquipment equipment) {
        return Turn.accepted(Work.on(Work.Task.RUN).named(equipment.code()), "run.load", equipment.code());
    }

    Turn put(Work work, Label.OfCarrier carrier, Recording recording) {
        if (work.since() != null || work.carriers().contains(carrier.code())) {
            return noMore(work, carrier);
        }
        Work more = work.withCarrier(carrier.code());
        tries(Work.on(Work.Task.RUN).named(work.called()).withCarrier(carrier.code()), recording);
        return Turn.accepted(
                more,
                "run.loaded",
                carrier.code(),
                routes.on(carrier.code()).size(),
                more.carriers().size() + more.units().size());
    }

    Turn put(Work work, Label.OfUnit unit, Recording recording) {
        if (work.since() != null || work.units().contains(unit.name())) {
            return noMore(work, unit);
        }
        Work more = work.with(unit.name());
        tries(Work.on(Work.Task.RUN).named(work.called()).with(unit.name()), recording);
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
        tries(work, recording);
        String recipe = recipes.iterator().next();
        return Turn.accepted(work.doing(recipe, recording.at()), "run.begun", work.called(), recipe);
    }

    /** Sees whether a run of such a load may begin, if it is for one recipe. */
    private void tries(Work work, Recording recording) {
        Set<String> recipes = recipes(work, recording.at());
        if (recipes.size() == 1) {
            String recipe = recipes.iterator().next();
            recording.tries("cure-run", Bodies.cureRun(work, number(work, recording.at()), recipe, recording.at()));
        }
    }

    /** Its label was read again while it runs: a run that only just began is asked about before it is ended. */
    Turn labelled(Work work, Recording recording) {
        OffsetDateTime since = Objects.requireNonNull(work.since());
        if (since.plus(shortest).isAfter(recording.at())) {
            long seconds = Duration.between(since, recording.at()).toSeconds();
            return new Turn(
                    work,
                    Verdict.asked(
                            Say.of("run.so-soon", work.called(), seconds),
                            List.of(new Verdict.Choice("." + Command.END.word(), Say.of("run.end", work.called())))));
        }
        return end(work, recording);
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
