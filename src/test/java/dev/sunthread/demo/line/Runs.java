package dev.sunthread.demo.line;

import dev.sunthread.demo.floor.Floor;
import dev.sunthread.demo.floor.Piece;
import dev.sunthread.demo.told.Bodies;
import dev.sunthread.simulator.world.Heat;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import tools.jackson.databind.node.ObjectNode;

/** Cure runs: what is truly in the load, and what is told to be. */
final class Runs {

    /** A run under a recipe in equipment at a station. */
    record Run(
            String number, String recipe, String equipment, String station, OffsetDateTime start, OffsetDateTime end) {}

    private final Floor floor;
    private final Profiles profiles;

    Runs(Floor floor) {
        this.floor = floor;
        this.profiles = new Profiles(floor.notes());
    }

    /** Cures units by themselves. */
    void cure(Run run, List<Piece> units) {
        happens(run, Set.copyOf(Piece.serials(units)), Set.of());
        tell(run, "units", Piece.json(units));
    }

    /** Cures all that is on carriers, and tells of some of them. */
    void cure(Run run, List<String> carriers, List<String> told) {
        happens(run, Set.of(), carriers.stream().collect(Collectors.toSet()));
        tell(
                run,
                "carriers",
                told.stream()
                        .map(carrier ->
                                Bodies.of("carrier", carrier, "position", "shelf " + (1 + carriers.indexOf(carrier))))
                        .toList());
    }

    private void happens(Run run, Set<String> units, Set<String> carriers) {
        Heat.Begin begin = new Heat.Begin(Floor.micros(run.start()), run.number(), units, carriers);
        floor.happens(begin);
        floor.happens(new Heat.End(Floor.micros(run.end()), begin, run.recipe(), run.equipment()));
    }

    private void tell(Run run, String field, List<ObjectNode> load) {
        floor.crew(run.station(), run.end())
                .tell(
                        run.end(),
                        "cure-run",
                        "run",
                        run.number(),
                        "recipe",
                        run.recipe(),
                        "equipment",
                        run.equipment(),
                        "startedAt",
                        run.start(),
                        field,
                        load,
                        "profile",
                        profiles.of(run));
    }
}
