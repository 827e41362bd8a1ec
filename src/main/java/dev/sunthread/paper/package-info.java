/**
 * Recording on paper while the network is gone: sheets of blank records, each with an id of its own, and their entry
 * afterwards.
 *
 * <p>What a sheet asks for is what the route says at the time it is printed, so that it can be said again for any record id
 * at any time. A record is entered once: what it tells is told, not asked for, so a broken rule gives a finding and what
 * can't be understood goes to the inbox. A record that is neither entered nor void may hide something that happened.
 */
@NullMarked
@ApplicationModule(
        allowedDependencies = {
            "kernel",
            "ledger",
            "ledger::body",
            "access",
            "catalog",
            "scan",
            "scan::label",
            "production",
            "station",
            "station::label",
            "journal"
        })
package dev.sunthread.paper;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
