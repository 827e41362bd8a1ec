/** Printing labels: of what is recorded, and of serials to come. */
@NullMarked
package dev.sunthread.web.label;

import org.jspecify.annotations.NullMarked;
