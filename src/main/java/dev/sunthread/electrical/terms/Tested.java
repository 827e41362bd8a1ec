package dev.sunthread.electrical.terms;

import java.util.List;
import java.util.Optional;

/** What was measured in one test, with the error that was found in the rig afterwards. */
public record Tested(List<Swept> sweeps, List<SafetyReading> readings, RigError error) {

    /** The first sweep of that name. */
    Optional<Swept> swept(String name) {
        return sweeps.stream().filter(one -> one.name().equals(name)).findFirst();
    }
}
