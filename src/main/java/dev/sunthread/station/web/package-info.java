/** The page at a station, and the same over HTTP for machines. */
@NullMarked
package dev.sunthread.station.web;

import org.jspecify.annotations.NullMarked;
