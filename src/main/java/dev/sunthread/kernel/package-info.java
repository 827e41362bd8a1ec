/** Value types that every module shares; they carry no Spring, no SQL and no state. */
@NullMarked
@ApplicationModule(allowedDependencies = {})
package dev.sunthread.kernel;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
