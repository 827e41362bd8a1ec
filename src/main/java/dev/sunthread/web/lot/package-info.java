/** The page of one lot: where it came from, where it was loaded, what used it. */
@NullMarked
package dev.sunthread.web.lot;

import org.jspecify.annotations.NullMarked;
