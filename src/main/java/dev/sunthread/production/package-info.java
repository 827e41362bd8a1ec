/** Units: their birth, steps, installations and removals, carriers, recovery and scrapping, shipments and returns. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "kernel",
            "access",
            "ledger",
            "ledger::body",
            "catalog",
            "scan",
            "materials",
            "materials::stock",
            "holds",
            "inbox",
            "inbox::typed"
        })
package dev.sunthread.production;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
