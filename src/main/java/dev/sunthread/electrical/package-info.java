/** Test runs: each measurement of one unit on one rig under a specification, with its verdict. */
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
            "catalog::specification",
            "production",
            "holds",
            "inbox"
        })
package dev.sunthread.electrical;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
