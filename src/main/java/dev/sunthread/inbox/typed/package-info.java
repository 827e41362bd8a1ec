/** Labels that could not be read and were typed by two persons. */
@NullMarked
@NamedInterface("typed")
package dev.sunthread.inbox.typed;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
