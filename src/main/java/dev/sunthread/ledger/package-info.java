/** The one door through which everything recorded comes in, and the positions it is read back by. */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel"})
package dev.sunthread.ledger;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
