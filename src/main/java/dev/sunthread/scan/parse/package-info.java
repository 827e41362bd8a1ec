/** Reads a scanned text whole: symbology identifier, separators, then whatever structure it has; without Spring. */
@NullMarked
@NamedInterface("parse")
package dev.sunthread.scan.parse;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
