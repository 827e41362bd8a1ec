/** Tokens of machines, and the devices at stations. */
@NullMarked
package dev.sunthread.access.machine;

import org.jspecify.annotations.NullMarked;
