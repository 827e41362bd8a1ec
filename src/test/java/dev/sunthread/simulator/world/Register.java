package dev.sunthread.simulator.world;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Numbers the things of one world, so that sets of them are small and quick. */
final class Register {

    private final Map<Thing, Integer> numbers = new HashMap<>();
    private final List<Thing> things = new ArrayList<>();

    /** Matter that consists of one thing. */
    Matter matter(Thing thing) {
        int number = numbers.computeIfAbsent(thing, any -> {
            things.add(thing);
            return things.size() - 1;
        });
        return Matter.of(number);
    }

    Set<Thing> things(BitSet marked) {
        return marked.stream().mapToObj(things::get).collect(Collectors.toSet());
    }
}
