/** People, roles and rights, badges, qualifications, tokens of machines, and the log of who came and went. */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel"})
package dev.sunthread.access;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
