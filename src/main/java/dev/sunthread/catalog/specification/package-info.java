/** What a revision of a specification states for computation; every part of it may be absent. */
@NullMarked
@NamedInterface("specification")
package dev.sunthread.catalog.specification;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
