/** Test runs judged from their raw sweeps and readings under revisions of specifications. */
@NullMarked
@NamedInterface("judging")
package dev.sunthread.electrical.judging;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
