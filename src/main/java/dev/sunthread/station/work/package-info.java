/** What is in hand at a station, what is missing to it, and what each scan does to it. */
@NullMarked
package dev.sunthread.station.work;

import org.jspecify.annotations.NullMarked;
