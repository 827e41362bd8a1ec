package dev.sunthread.demo;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.genealogy.AnswerLine;
import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.LineFilter;
import dev.sunthread.genealogy.Root;
import dev.sunthread.genealogy.Scope;
import dev.sunthread.genealogy.TraceQuestion;
import dev.sunthread.genealogy.Traces;
import dev.sunthread.genealogy.Way;
import dev.sunthread.journal.Restores;
import dev.sunthread.simulator.world.Thing;
import dev.sunthread.simulator.world.World;
import dev.sunthread.testing.SunthreadTest;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/**
 * The answers on the demo plant against what truly happened in it, which no record of it tells: no unit is missed,
 * ever or now, of a lot of any material or of a cure run. {@code -Dsunthread.demo.each=1} asks about each of them, and
 * {@code -Dsunthread.demo.trays=20} a plant of 20,000 receivers.
 */
@SunthreadTest
class DemoTruthTests {

    private static final int TRAYS = Integer.getInteger("sunthread.demo.trays", DemoPlant.FEW_TRAYS);

    private static final int EACH = Integer.getInteger("sunthread.demo.each", 40);

    @Autowired
    Restores restores;

    @Autowired
    Traces traces;

    @Test
    void missesNoUnitOfAnyLotOrCureRun() throws IOException {
        DemoPlant plant = DemoPlant.of(TRAYS);
        restores.run(new ByteArrayInputStream(plant.journal().getBytes(StandardCharsets.UTF_8)), restored -> {});
        World end = World.after(plant.happened());
        Map<Thing, Set<String>> touched = units(end, World::touched);
        Map<Thing, Set<String>> present = units(end, World::present);
        Set<String> falselyCertain = new TreeSet<>();
        assertThat(touched.keySet()).hasSizeGreaterThan(200);
        List<Thing> suspects = List.copyOf(touched.keySet());
        for (int i = 0; i < suspects.size(); i += EACH) {
            Thing suspect = suspects.get(i);
            Set<String> truth = touched.getOrDefault(suspect, Set.of());
            List<AnswerLine> lines = ask(suspect);
            assertThat(names(lines, AnswerLine::ever)).as("%s, ever", suspect).containsAll(truth);
            assertThat(names(lines, AnswerLine::now))
                    .as("%s, now", suspect)
                    .containsAll(present.getOrDefault(suspect, Set.of()));
            lines.stream()
                    .filter(line -> line.kind().equals("UNIT") && line.ever() == Certainty.CERTAIN)
                    .map(AnswerLine::name)
                    .filter(name -> !truth.contains(name))
                    .forEach(name -> falselyCertain.add(suspect.name() + " in " + name));
        }
        assertThat(falselyCertain).isEmpty();
    }

    /** Of each lot and cure run, the units that it is in by the truth. */
    private static Map<Thing, Set<String>> units(World world, BiFunction<World, Thing, Set<Thing>> contents) {
        Map<Thing, Set<String>> units = new TreeMap<>();
        world.holders().stream()
                .filter(thing -> thing.kind() == Thing.Kind.UNIT)
                .forEach(unit -> contents.apply(world, unit).stream()
                        .filter(DemoTruthTests::isLotOrRun)
                        .forEach(suspect -> units.computeIfAbsent(suspect, any -> new TreeSet<>())
                                .add(unit.name())));
        return units;
    }

    private static boolean isLotOrRun(Thing thing) {
        return thing.kind() == Thing.Kind.LOT || thing.kind() == Thing.Kind.CURE_RUN;
    }

    private List<AnswerLine> ask(Thing suspect) {
        Root root = suspect.kind() == Thing.Kind.LOT
                ? new Root.OfLot(suspect.name())
                : new Root.OfScope(new Scope.CureRun(suspect.name()));
        List<AnswerLine> lines = new ArrayList<>();
        traces.each(traces.ask(new TraceQuestion(Way.FORWARD, root, null, null)).id(), LineFilter.ALL, lines::add);
        return lines;
    }

    private static Set<String> names(List<AnswerLine> lines, Function<AnswerLine, @Nullable Certainty> time) {
        return lines.stream()
                .filter(line -> line.kind().equals("UNIT") && time.apply(line) != null)
                .map(AnswerLine::name)
                .collect(Collectors.toSet());
    }
}
