/** The trace, forward and backward, over one view of edges; it reads history only and records no facts. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "kernel",
            "kernel::verdict",
            "database",
            "access",
            "ledger",
            "ledger::body",
            "catalog",
            "catalog::judging",
            "materials",
            "production",
            "quality",
            "cure",
            "cure::judging",
            "electrical",
            "electrical::judging",
            "holds",
            "inbox"
        })
package dev.sunthread.genealogy;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
