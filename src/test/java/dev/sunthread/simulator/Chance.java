package dev.sunthread.simulator;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Draws at random; the same seed draws the same. */
public final class Chance {

    private final Random random;

    public Chance(long seed) {
        this.random = new Random(seed);
    }

    public boolean of(double probability) {
        return random.nextDouble() < probability;
    }

    /** A whole number from {@code least} to {@code most}, both included. */
    public int between(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    public <T> T any(Collection<T> things) {
        return List.copyOf(things).get(random.nextInt(things.size()));
    }

    /** At most so many of them, in any order. */
    public <T> List<T> some(Collection<T> things, int most) {
        List<T> shuffled = new ArrayList<>(things);
        Collections.shuffle(shuffled, random);
        return List.copyOf(shuffled.subList(0, Math.min(most, shuffled.size())));
    }

    /** Each with this probability. */
    public <T> List<T> each(Collection<T> things, double probability) {
        return things.stream().filter(any -> of(probability)).toList();
    }
}
