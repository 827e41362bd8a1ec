/** The one view of edges, the same in both directions. */
@NullMarked
package dev.sunthread.genealogy.edge;

import org.jspecify.annotations.NullMarked;
