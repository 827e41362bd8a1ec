/** The page of a process value: its chart over time with limits, the table beside it, and the trace of what lies outside. */
@NullMarked
package dev.sunthread.web.value;

import org.jspecify.annotations.NullMarked;
