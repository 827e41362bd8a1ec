/** What the demo line is given: definitions, lots in store, and lots loaded at its positions. */
@NullMarked
package dev.sunthread.demo.supply;

import org.jspecify.annotations.NullMarked;
