/** Lots made of other lots: blended, split, merged, regraded, relabelled. */
@NullMarked
package dev.sunthread.materials.making;

import org.jspecify.annotations.NullMarked;
