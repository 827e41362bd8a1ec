/** Lots and containers: what was received or made, where it was loaded and unloaded, when a position was cleaned. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {"kernel", "access", "ledger", "ledger::body", "catalog", "holds", "inbox", "inbox::typed"
        })
package dev.sunthread.materials;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
