package dev.sunthread.genealogy.history;

import dev.sunthread.genealogy.walk.Moment;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Spells in which the times that stations told are not proven: any time told within one may be any other of it. Those of one
 * station that overlap are one spell.
 */
final class UnprovenSpells {

    /** From when to when a station told times that are not proven, in microseconds. */
    record Spell(long station, long since, long until) {

        boolean contains(long instant) {
            return since <= instant && instant <= until;
        }
    }

    private final Map<Long, TreeMap<Long, Spell>> spells = new HashMap<>();

    UnprovenSpells(Collection<Spell> told) {
        told.stream().sorted(Comparator.comparingLong(Spell::since)).forEach(this::add);
    }

    private void add(Spell spell) {
        TreeMap<Long, Spell> ofStation = spells.computeIfAbsent(spell.station(), any -> new TreeMap<>());
        Map.Entry<Long, Spell> before = ofStation.floorEntry(spell.until());
        Spell joined = before == null || before.getValue().until() < spell.since()
                ? spell
                : new Spell(
                        spell.station(),
                        before.getValue().since(),
                        Math.max(before.getValue().until(), spell.until()));
        ofStation.put(joined.since(), joined);
    }

    /** The spell of the station that the instant lies in. */
    @Nullable
    Spell at(long station, long instant) {
        Map.Entry<Long, Spell> begun =
                spells.getOrDefault(station, new TreeMap<>()).floorEntry(instant);
        return begun != null && begun.getValue().contains(instant) ? begun.getValue() : null;
    }

    /** The spells of any station that the moment may lie in. */
    List<Spell> at(Moment moment) {
        List<Spell> found = new ArrayList<>();
        for (TreeMap<Long, Spell> ofStation : spells.values()) {
            ofStation.headMap(moment.late(), true).values().stream()
                    .filter(spell -> spell.until() >= moment.early())
                    .forEach(found::add);
        }
        return found;
    }
}
