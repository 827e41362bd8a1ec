/** Times of the application on a full plant, told and not judged; see src/docs/benchmarks.md. */
@NullMarked
package dev.sunthread.benchmark;

import org.jspecify.annotations.NullMarked;
