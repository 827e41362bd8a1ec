/** Cure runs: which units and carriers were cured together, where, when and by which recipe. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "kernel",
            "kernel::verdict",
            "ledger",
            "ledger::body",
            "catalog",
            "catalog::judging",
            "catalog::recipe",
            "production",
            "holds",
            "inbox"
        })
package dev.sunthread.cure;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
