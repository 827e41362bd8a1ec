/** What a computation says of measured values: between which values they lie, against limits, in sentences. */
@NullMarked
@NamedInterface("verdict")
package dev.sunthread.kernel.verdict;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
