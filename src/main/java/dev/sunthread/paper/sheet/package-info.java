/** Sheets of blank records as PDF. */
@NullMarked
package dev.sunthread.paper.sheet;

import org.jspecify.annotations.NullMarked;
