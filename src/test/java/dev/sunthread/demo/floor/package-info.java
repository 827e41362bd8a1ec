/** Where the demo plant's work goes on: what truly happens there, its units, and who tells of them. */
@NullMarked
package dev.sunthread.demo.floor;

import org.jspecify.annotations.NullMarked;
