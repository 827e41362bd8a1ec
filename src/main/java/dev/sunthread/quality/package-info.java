/** What people decide of units and lots: signed statements that something demanded was not done. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "kernel",
            "access",
            "ledger",
            "ledger::body",
            "catalog",
            "materials",
            "production",
            "holds",
            "inbox"
        })
package dev.sunthread.quality;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
