/**
 * Verdicts on runs under revisions, for every module that has runs: which are missing, which stand, and keeping them.
 * The modules say by {@link dev.sunthread.catalog.judging.Judge} how one is judged.
 */
@NullMarked
@NamedInterface("judging")
package dev.sunthread.catalog.judging;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
