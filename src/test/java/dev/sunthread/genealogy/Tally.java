package dev.sunthread.genealogy;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What the check of some plants found: pairs of a suspect and what it is in, per question. */
final class Tally {

    /** One pair on which trace and truth differ. */
    record Odd(long seed, String question, String suspect, String target, String answered) {}

    private static final int TOLD = 20;

    long plants;
    long truePairs;
    long missed;
    long falselyCertain;
    final Map<Certainty, Long> excess = new EnumMap<>(Certainty.class);
    final List<Odd> misses = new ArrayList<>();
    final List<Odd> lies = new ArrayList<>();

    void miss(Odd odd) {
        missed++;
        keep(misses, odd);
    }

    void excess(Certainty certainty, Odd odd) {
        excess.merge(certainty, 1L, Long::sum);
        if (certainty == Certainty.CERTAIN) {
            falselyCertain++;
            keep(lies, odd);
        }
    }

    long excess(Certainty certainty) {
        return excess.getOrDefault(certainty, 0L);
    }

    private static void keep(List<Odd> some, Odd odd) {
        if (some.size() < TOLD) {
            some.add(odd);
        }
    }
}
