/** Lots: what was received, where it was loaded and unloaded, and when a position was cleaned. */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel", "ledger", "ledger::body", "catalog", "holds", "inbox"})
package dev.sunthread.materials;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
