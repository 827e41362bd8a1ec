/** The layout, the start page, search and the pages that gather several modules. */
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
            "scan",
            "scan::meaning",
            "scan::parse",
            "scan::label",
            "materials",
            "materials::stock",
            "materials::incoming",
            "production",
            "production::balance",
            "cure",
            "electrical",
            "genealogy",
            "journal"
        })
package dev.sunthread.web;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
