/** Refusals at a station that a person may pass by signature, and what is to be signed. */
@NullMarked
package dev.sunthread.station.pass;

import org.jspecify.annotations.NullMarked;
