package dev.sunthread.genealogy;

import dev.sunthread.simulator.told.Fault;
import dev.sunthread.simulator.told.Rates;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/** The mixtures of faults that simulated plants are checked with, one for each kind of fault and one of all. */
final class FaultKinds {

    private static final double RATE = 0.3;

    private FaultKinds() {}

    /** Those that the trace is held to miss nothing with, by name. */
    static Map<String, Rates> held() {
        Map<String, Rates> kinds = new LinkedHashMap<>();
        kinds.put("none", Rates.NONE);
        Arrays.stream(Fault.values())
                .filter(fault -> !fault.isCountedApart())
                .forEach(fault -> kinds.put(Rates.words(fault), withLostScans(fault)));
        kinds.put("many at once", many(0.05));
        return kinds;
    }

    /** Those that the records can't tell, or that no rule finds yet. */
    static Map<String, Rates> apart() {
        Map<String, Rates> kinds = new LinkedHashMap<>();
        Arrays.stream(Fault.values())
                .filter(Fault::isCountedApart)
                .forEach(fault -> kinds.put(Rates.words(fault), withLostScans(fault)));
        kinds.put("many at once, 0.1 each", many(0.1));
        kinds.put("many at once, 0.3 each", many(0.3));
        return kinds;
    }

    // where every lot is scanned the records of positions hardly matter
    private static Rates withLostScans(Fault fault) {
        return Rates.NONE.with(Fault.LOST_LOT_SCAN, 0.5).with(fault, rate(fault));
    }

    private static double rate(Fault fault) {
        return switch (fault) {
            case DOUBLED_SERIAL -> 0.2;
            case UNDETECTABLE_INSTALLATION -> 0.1;
            case USED_BY_HAND, CHANGED_IN_A_ROW -> 1;
            default -> RATE;
        };
    }

    private static Rates many(double rate) {
        Rates many = Rates.NONE;
        for (Fault fault : Fault.values()) {
            if (!fault.isCountedApart() && !fault.isFalse() && fault != Fault.DOUBLED_SERIAL) {
                many = many.with(fault, rate);
            }
        }
        return many;
    }
}
