/** Pages at stations that say that they are there and how many scans they keep; who is not heard is behind. */
@NullMarked
package dev.sunthread.station.contact;

import org.jspecify.annotations.NullMarked;
