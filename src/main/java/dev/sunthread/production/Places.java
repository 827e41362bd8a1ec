package dev.sunthread.production;

import dev.sunthread.ledger.SoleWriter;
import java.util.Collection;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** What a transaction that records alone knows of the units it made: where they were, and their positions named so far. */
@Component
class Places {

    private final SoleWriter sole;

    Places(SoleWriter sole) {
        this.sole = sole;
    }

    private Map<Long, Boolean> moved() {
        return sole.known("units that were put somewhere");
    }

    private Map<Long, Set<String>> positions() {
        return sole.known("positions of units");
    }

    /** Says that these units were not there before the transaction, so that they and their positions are free. */
    void begin(Collection<Long> units) {
        units.forEach(unit -> {
            moved().put(unit, false);
            positions().put(unit, new HashSet<>());
        });
    }

    /**
     * Says that a child is put into a parent or taken out; gives whether the two surely have nothing to do with anything
     * recorded before: the position was never named, and the child, if it is a unit, never put anywhere.
     */
    boolean name(Children.Child child, long parent, @Nullable String position) {
        Set<String> named = positions().get(parent);
        boolean isNew = named != null && position != null && named.add(position);
        return (child.unit() == null || Boolean.FALSE.equals(moved().put(child.unit(), true))) && isNew;
    }
}
