/** What the records of one position say about where a use there drew from. */
@NullMarked
package dev.sunthread.genealogy.position;

import org.jspecify.annotations.NullMarked;
