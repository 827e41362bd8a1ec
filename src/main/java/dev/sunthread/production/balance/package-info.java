/** What became of a lot or container by all records: what materials moved and what went into units. */
@NullMarked
@NamedInterface("balance")
package dev.sunthread.production.balance;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
