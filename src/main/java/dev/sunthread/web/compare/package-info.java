/** Two things side by side: two units as they are built, two answers of traces. */
@NullMarked
package dev.sunthread.web.compare;

import org.jspecify.annotations.NullMarked;
