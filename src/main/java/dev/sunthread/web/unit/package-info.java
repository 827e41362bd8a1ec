/** The page of one unit: what it is, where it is, what is and was in it, and all that happened to it. */
@NullMarked
package dev.sunthread.web.unit;

import org.jspecify.annotations.NullMarked;
