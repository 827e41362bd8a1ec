/** What a simulated plant records of what truly happened, and which records are lost, late or wrong. */
@NullMarked
package dev.sunthread.simulator.told;

import org.jspecify.annotations.NullMarked;
