package dev.sunthread.station.pass;

import dev.sunthread.production.UnitName;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What somebody who may judge can sign, so that a scan that was refused is done after all.
 *
 * @param rule the rule that refused it
 * @param scan the text to take again once it is signed
 * @param operation the operation it is good for; absent for whatever is done
 * @param isAsked whether the page asks for the signature now
 */
public record Passing(
        String rule,
        String scan,
        @Nullable String operation,
        List<UnitName> units,
        List<String> lots,
        List<String> containers,
        boolean isAsked) {

    public Passing {
        units = List.copyOf(units);
        lots = List.copyOf(lots);
        containers = List.copyOf(containers);
    }

    /** The same once the page asks for the signature. */
    public Passing asked() {
        return new Passing(rule, scan, operation, units, lots, containers, true);
    }
}
