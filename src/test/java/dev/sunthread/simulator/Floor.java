package dev.sunthread.simulator;

import dev.sunthread.simulator.world.Happening;
import dev.sunthread.simulator.world.World;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The shop floor while things happen on it, one after the other, some of them at the same instant. */
final class Floor {

    static final long BEGIN =
            OffsetDateTime.parse("2026-03-10T08:00:00+01:00").toInstant().toEpochMilli() * 1000;
    private static final long SECOND = 1_000_000;

    final Chance chance;
    final World world = new World();
    final List<Happening> happened = new ArrayList<>();
    private final Map<String, Integer> numbers = new HashMap<>();
    private long now = BEGIN;
    private long before = BEGIN;

    Floor(Chance chance) {
        this.chance = chance;
    }

    void happens(Happening happening) {
        world.happens(happening);
        happened.add(happening);
    }

    /** The instant of the next happening. */
    long next() {
        before = now;
        now += chance.of(0.06) ? 0 : SECOND * (chance.of(0.1) ? 1 : chance.between(5, 600));
        return now;
    }

    /** The same, but surely later than all before: what is taken out of something is gone from that instant on. */
    long nextLater() {
        before = now;
        now += SECOND * chance.between(1, 600);
        return now;
    }

    /** The same, but so much later that nobody takes it for the same told twice. */
    long nextApart() {
        before = now;
        now += SECOND * chance.between(3, 600);
        return now;
    }

    /** When what ends at the instant last given began: not before what happened before it. */
    long start() {
        return chance.of(0.5) ? now : now - SECOND * chance.between(0, (int) ((now - before) / SECOND));
    }

    /** A new name, counted up for each beginning. */
    String named(String beginning) {
        return beginning + numbers.merge(beginning, 1, Integer::sum);
    }
}
