/** Curves of current and voltage: volts, amperes, watts, ohms. Current is positive where light drives it out. */
@NullMarked
package dev.sunthread.electrical.curve;

import org.jspecify.annotations.NullMarked;
