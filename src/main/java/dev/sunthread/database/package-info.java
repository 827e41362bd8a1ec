/**
 * The PostgreSQL server the application brings along, for a start with nothing set up. It runs only where no
 * {@code spring.datasource.url} is given, keeps its rows over restarts and crashes, and is reached from this machine only.
 */
@ApplicationModule(allowedDependencies = {})
@NullMarked
package dev.sunthread.database;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
