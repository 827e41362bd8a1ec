/** The records of history, read from the database as known at a cut-off. */
@NullMarked
package dev.sunthread.genealogy.history;

import org.jspecify.annotations.NullMarked;
