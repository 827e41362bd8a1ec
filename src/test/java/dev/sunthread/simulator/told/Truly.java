package dev.sunthread.simulator.told;

import dev.sunthread.simulator.world.Happening;
import dev.sunthread.simulator.world.Heat;
import dev.sunthread.simulator.world.Work;
import dev.sunthread.simulator.world.World;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What truly was so beside what is recorded: who was in which run, and through which units work acted on others. */
final class Truly {

    private final Map<String, Set<String>> aboard = new HashMap<>();
    private final Map<Happening, List<String>> emptied = new IdentityHashMap<>();
    private final Map<Happening, Set<String>> through = new IdentityHashMap<>();
    private final List<Heat.End> ends = new ArrayList<>();
    private final Map<String, String> recipes = new HashMap<>();
    private final Map<String, String> items;
    private final World last = new World();

    Truly(Collection<Happening> happenings, Map<String, String> items) {
        this.items = items;
        Set<String> running = new HashSet<>();
        for (Happening happening : happenings) {
            if (happening instanceof Heat.Emptying all) {
                emptied.put(all, List.copyOf(last.carriedBy(all.carrier())));
            }
            if (happening instanceof Work work) {
                through.put(work, through(work));
            }
            if (happening instanceof Heat.Begin begin) {
                running.add(begin.run());
            }
            if (happening instanceof Heat.End end) {
                recipes.put(end.begin().run(), end.recipe());
                ends.add(end);
            }
            last.happens(happening);
            running.forEach(
                    run -> aboard.computeIfAbsent(run, any -> new HashSet<>()).addAll(last.aboard(run)));
        }
    }

    private Set<String> through(Work work) {
        Set<String> through = new HashSet<>();
        for (String unit : named(work)) {
            for (String inner = unit; last.parentOf(inner) != null; inner = String.valueOf(last.parentOf(inner))) {
                through.add(inner);
            }
        }
        return through;
    }

    private static List<String> named(Work work) {
        if (work instanceof Work.Test test) {
            return List.of(test.unit());
        }
        if (work instanceof Work.Begun begun) {
            return begun.alone() ? List.of() : begun.units();
        }
        Work.Step step = (Work.Step) work;
        return step.alone() ? List.of() : step.units();
    }

    /** Whether the happening acted on what is around the unit through it. */
    boolean actsThrough(Happening happening, String unit) {
        return through.getOrDefault(happening, Set.of()).contains(unit);
    }

    Set<String> in(String run) {
        return aboard.getOrDefault(run, Set.of());
    }

    /** How many runs under a recipe a unit has been through, by itself or inside another. */
    long count(String unit, String recipe) {
        return last.runsThrough(unit).stream()
                .filter(run -> recipe.equals(recipes.get(run)))
                .count();
    }

    /** The runs under a recipe that a unit has been through, by itself or inside another. */
    List<Heat.End> under(String unit, String recipe) {
        Set<String> through = Set.copyOf(last.runsThrough(unit));
        return ends.stream()
                .filter(end -> recipe.equals(end.recipe())
                        && through.contains(end.begin().run()))
                .toList();
    }

    /** Runs recorded after one record that the unit was in, and that began before another. */
    List<Heat.End> between(int from, int to, String unit, List<Draft> drafts) {
        long off = to < drafts.size() ? drafts.get(to).happening.at() : Long.MAX_VALUE;
        List<Heat.End> runs = new ArrayList<>();
        for (Draft draft : drafts.subList(from, drafts.size())) {
            if (draft.happening instanceof Heat.End end
                    && end.begin().at() <= off
                    && in(end.begin().run()).contains(unit)) {
                runs.add(end);
            }
        }
        return runs;
    }

    List<String> emptied(Heat.Emptying happening) {
        return emptied.getOrDefault(happening, List.of());
    }

    String carrier(Happening happening) {
        return happening instanceof Heat.Unload off ? off.carrier() : ((Heat.Emptying) happening).carrier();
    }

    String itemOf(String unit) {
        return items.getOrDefault(unit, "");
    }
}
