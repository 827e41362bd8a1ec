/** The tour of the README through the demo plant: its pictures and its counts, made and held true. */
@NullMarked
package dev.sunthread.tour;

import org.jspecify.annotations.NullMarked;
