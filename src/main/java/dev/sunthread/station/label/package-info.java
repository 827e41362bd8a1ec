/** What labels name that are scanned at a station, and the words a station understands. */
@NullMarked
@NamedInterface("label")
package dev.sunthread.station.label;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
