/** Readings of sensors over time, piecewise linear between them: checked, never smoothed, never completed. */
@NullMarked
package dev.sunthread.cure.profile;

import org.jspecify.annotations.NullMarked;
