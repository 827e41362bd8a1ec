/** The model of one diode for a cell or string, and its fit to a curve. Volts, amperes, ohms. */
@NullMarked
@NamedInterface("diode")
package dev.sunthread.electrical.diode;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
