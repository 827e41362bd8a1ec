/** The layout, the start page, search and the pages that gather several modules. */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "kernel",
            "database",
            "access",
            "kernel::verdict",
            "ledger",
            "ledger::body",
            "inbox",
            "inbox::typed",
            "holds",
            "catalog",
            "scan",
            "scan::meaning",
            "scan::parse",
            "scan::label",
            "catalog::judging",
            "catalog::recipe",
            "materials",
            "materials::stock",
            "materials::incoming",
            "production",
            "production::balance",
            "quality",
            "cure",
            "cure::judging",
            "electrical",
            "electrical::judging",
            "electrical::curve",
            "electrical::diode",
            "electrical::terms",
            "electrical::translate",
            "genealogy",
            "journal",
            "paper",
            "station",
            "station::label"
        })
package dev.sunthread.web;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
