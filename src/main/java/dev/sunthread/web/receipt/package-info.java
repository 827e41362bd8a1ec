/** Receiving a delivery: the supplier's label fills the receipt, a person confirms it. */
@NullMarked
package dev.sunthread.web.receipt;

import org.jspecify.annotations.NullMarked;
