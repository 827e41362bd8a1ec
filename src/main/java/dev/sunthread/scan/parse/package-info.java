/** Reads a scanned text whole: symbology identifier, separators, then whatever structure it has; without Spring. */
@NullMarked
package dev.sunthread.scan.parse;

import org.jspecify.annotations.NullMarked;
