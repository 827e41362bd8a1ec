/** What released routes and structures demand, and what signed deviations excuse. */
@NullMarked
package dev.sunthread.genealogy.demand;

import org.jspecify.annotations.NullMarked;
