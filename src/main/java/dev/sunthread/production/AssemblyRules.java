package dev.sunthread.production;

import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import java.util.Map;
import java.util.Objects;
import org.springframework.stereotype.Component;

/** A hold acts on all that the thing on hold is built together with, as long as it is. */
@Component
class AssemblyRules {

    private final HeldAssemblies assemblies;

    AssemblyRules(HeldAssemblies assemblies) {
        this.assemblies = assemblies;
    }

    /**
     * Notes or refuses what is on hold of all that units are built together with.
     *
     * @param whole whether what is done acts on the outermost parent with all inside it
     */
    void nothingBuiltTogetherIsOnHold(Fact<?> fact, Map<Long, UnitName> named, boolean whole) {
        assemblies.of(fact, named.keySet(), whole).forEach(part -> {
            String unit = "Unit " + Objects.requireNonNull(named.get(part.unit()));
            switch (part.place()) {
                case INSIDE -> nothingInsideIsOnHold(fact, unit, part);
                case AROUND -> nothingAroundItIsOnHold(fact, unit, part);
                case LOT -> noLotInItIsOnHold(fact, unit, part);
            }
        });
    }

    private static void nothingInsideIsOnHold(Fact<?> fact, String unit, HeldPart part) {
        breaks(fact, "nothing-inside-is-on-hold", unit + " has " + part.name() + " inside, which is on hold: ", part);
    }

    private static void nothingAroundItIsOnHold(Fact<?> fact, String unit, HeldPart part) {
        breaks(
                fact,
                "nothing-around-it-is-on-hold",
                unit + " is built together with " + part.name() + ", which is on hold: ",
                part);
    }

    private static void noLotInItIsOnHold(Fact<?> fact, String unit, HeldPart part) {
        breaks(
                fact,
                "no-lot-in-it-is-on-hold",
                "Lot " + part.name() + ", which went into " + Character.toLowerCase(unit.charAt(0)) + unit.substring(1)
                        + " or what it is built together with, is on hold: ",
                part);
    }

    private static void breaks(Fact<?> fact, String rule, String sentence, HeldPart part) {
        fact.breaks(
                rule,
                sentence + part.reason(),
                "Set the whole assembly aside and ask quality",
                TraceRef.unit(part.unit()),
                part.ref());
    }
}
