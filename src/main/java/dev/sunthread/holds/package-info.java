/** Reasons why a lot or unit may not move on; a thing can carry several. */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel", "access", "ledger", "ledger::body"})
package dev.sunthread.holds;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
