/** Import, export and restore of everything recorded, as lines of one documented format. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "kernel",
            "access",
            "ledger",
            "ledger::body",
            "inbox",
            "holds",
            "catalog",
            "materials",
            "production",
            "genealogy"
        })
package dev.sunthread.journal;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
