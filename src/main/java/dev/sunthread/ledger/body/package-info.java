/** How the body of an envelope is described, read field by field, and written back. */
@NullMarked
@NamedInterface("body")
package dev.sunthread.ledger.body;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
