/** The trace, forward and backward, over one view of edges; it reads history only and records no facts. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "kernel",
            "ledger",
            "ledger::body",
            "catalog",
            "materials",
            "production",
            "holds",
            "inbox"
        })
package dev.sunthread.genealogy;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
