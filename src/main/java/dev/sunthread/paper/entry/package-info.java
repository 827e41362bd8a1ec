/** Entering a record that was written on paper. */
@NullMarked
package dev.sunthread.paper.entry;

import org.jspecify.annotations.NullMarked;
