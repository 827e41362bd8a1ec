/** The walk through the genealogy under the path rule, over edges from wherever they come. */
@NullMarked
package dev.sunthread.genealogy.walk;

import org.jspecify.annotations.NullMarked;
