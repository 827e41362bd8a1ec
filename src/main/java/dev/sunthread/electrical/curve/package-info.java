/** Curves of current and voltage: volts, amperes, watts, ohms. Current is positive where light drives it out. */
@NullMarked
@NamedInterface("curve")
package dev.sunthread.electrical.curve;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
