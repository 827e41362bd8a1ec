/** Lines that could not be accepted and contradictions that a person must settle. */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel", "access", "ledger", "ledger::body"})
package dev.sunthread.inbox;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
