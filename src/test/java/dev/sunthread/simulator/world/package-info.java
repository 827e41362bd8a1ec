/** What truly happens in a simulated plant: matter, bodies, positions and carriers, moved one happening at a time. */
@NullMarked
package dev.sunthread.simulator.world;

import org.jspecify.annotations.NullMarked;
