/**
 * Released, revisioned definitions: items, stations with positions, structures and routes, recipes,
 * specifications, equipment with its checks, and faults.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel", "kernel::verdict", "database", "access", "ledger", "ledger::body"})
package dev.sunthread.catalog;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
