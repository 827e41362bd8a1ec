/** What revisions of specifications demand of tests, and tests judged by them. */
@NullMarked
@NamedInterface("terms")
package dev.sunthread.electrical.terms;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
