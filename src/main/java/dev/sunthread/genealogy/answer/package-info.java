/** Answers: their lines in words, kept for paging. */
@NullMarked
package dev.sunthread.genealogy.answer;

import org.jspecify.annotations.NullMarked;
