/** What labels name that are scanned at a station. */
@NullMarked
package dev.sunthread.station.label;

import org.jspecify.annotations.NullMarked;
