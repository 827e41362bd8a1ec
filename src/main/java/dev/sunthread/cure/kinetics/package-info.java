/** How far a reaction goes at the temperatures of a profile. Temperatures in kelvin, times in seconds, energies in J/mol. */
@NullMarked
package dev.sunthread.cure.kinetics;

import org.jspecify.annotations.NullMarked;
