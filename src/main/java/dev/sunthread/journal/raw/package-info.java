/** Files of loggers and rigs: raw profiles and sweeps as CSV with any headers, or as JSON, taken in as envelopes. */
@NullMarked
package dev.sunthread.journal.raw;

import org.jspecify.annotations.NullMarked;
