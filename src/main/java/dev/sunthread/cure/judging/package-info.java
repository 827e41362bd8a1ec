/** Cure runs judged from their raw profiles under revisions of recipes. */
@NullMarked
@NamedInterface("judging")
package dev.sunthread.cure.judging;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
