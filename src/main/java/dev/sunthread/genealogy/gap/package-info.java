/** What is demanded and not recorded, and all that may have been it. */
@NullMarked
package dev.sunthread.genealogy.gap;

import org.jspecify.annotations.NullMarked;
