/** Answers while they are made: the queue of them, how far each is, and who waits for it. */
@NullMarked
package dev.sunthread.genealogy.making;

import org.jspecify.annotations.NullMarked;
