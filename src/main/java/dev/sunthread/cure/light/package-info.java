/** Dose of ultraviolet light: irradiance in mW/cm2, dose in mJ/cm2. */
@NullMarked
package dev.sunthread.cure.light;

import org.jspecify.annotations.NullMarked;
