package dev.sunthread.production;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Looks up what is put on a carrier or taken off it, and lets one writer at a time change it. */
@Component
class Carried {

    /** One unit or carrier as the database knows it, in the order named; exactly one is given. */
    record Thing(@Nullable Long unit, @Nullable Long carrier) {}

    private final Units units;
    private final Carriers carriers;

    Carried(Units units, Carriers carriers) {
        this.units = units;
        this.carriers = carriers;
    }

    /** What is named at a field, known from now on and locked together with the carrier it is on. */
    List<Thing> locked(long carrier, List<? extends CarriedName> names, String field) {
        List<Thing> things = known(names, field);
        units.lock(things.stream().map(Thing::unit).filter(Objects::nonNull).toList());
        Set<Long> touched = new HashSet<>(
                things.stream().map(Thing::carrier).filter(Objects::nonNull).toList());
        touched.add(carrier);
        carriers.lock(touched);
        return things;
    }

    private List<Thing> known(List<? extends CarriedName> names, String field) {
        Map<UnitName, Integer> named = new LinkedHashMap<>();
        for (int i = 0; i < names.size(); i++) {
            UnitName unit = names.get(i).unit();
            if (unit != null) {
                named.putIfAbsent(unit, i);
            }
        }
        List<Integer> at = List.copyOf(named.values());
        List<Long> numbers = units.known(List.copyOf(named.keySet()), i -> field + "[" + at.get(i) + "].unit");
        Map<UnitName, Long> known = new HashMap<>();
        Iterator<Long> number = numbers.iterator();
        named.keySet().forEach(name -> known.put(name, number.next()));
        return names.stream()
                .map(name -> name.carrier() == null
                        ? new Thing(known.get(name.unit()), null)
                        : new Thing(null, carriers.known(name.carrier())))
                .toList();
    }

    /** The units among them with the names they were given. */
    static Map<Long, UnitName> units(List<Thing> things, List<? extends CarriedName> names) {
        Map<Long, UnitName> units = new LinkedHashMap<>();
        for (int i = 0; i < things.size(); i++) {
            Long unit = things.get(i).unit();
            if (unit != null) {
                units.putIfAbsent(unit, Objects.requireNonNull(names.get(i).unit()));
            }
        }
        return units;
    }

    /** The units of a list, nothing where a carrier stands, as the database takes them. */
    static @Nullable Long[] unitColumn(Collection<Thing> things) {
        return things.stream().map(Thing::unit).toArray(Long[]::new);
    }

    static @Nullable Long[] carrierColumn(Collection<Thing> things) {
        return things.stream().map(Thing::carrier).toArray(Long[]::new);
    }
}
