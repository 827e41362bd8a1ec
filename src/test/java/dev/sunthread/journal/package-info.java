/** Journals in and out: every kind, every mutation, hostile files, restores. */
@NullMarked
package dev.sunthread.journal;

import org.jspecify.annotations.NullMarked;
