/**
 * Small random plants in which matter truly moves, and what such a plant records of itself. What is in what is computed
 * by moving matter forward in time, so that the trace can be checked against it.
 */
@NullMarked
package dev.sunthread.simulator;

import org.jspecify.annotations.NullMarked;
