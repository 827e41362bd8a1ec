/**
 * The page at a station: it takes scans, tells what came of each and what to scan next, and records through the door.
 *
 * <p>{@link dev.sunthread.station.Bench#scan} takes one scan and never fails for what is scanned: everything it has to say
 * is a {@link dev.sunthread.station.Verdict}. A scan asks for something to be done, so a broken rule refuses it and
 * nothing is recorded; a scan that the page kept while the server was away tells what was done, and is recorded whatever
 * rule it breaks, or kept in the inbox where it can't be understood.
 */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "kernel",
            "ledger",
            "ledger::body",
            "access",
            "inbox",
            "inbox::typed",
            "holds",
            "catalog",
            "scan",
            "scan::meaning",
            "scan::label",
            "materials",
            "materials::stock",
            "production",
            "production::balance",
            "quality",
            "cure",
            "electrical"
        })
package dev.sunthread.station;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
