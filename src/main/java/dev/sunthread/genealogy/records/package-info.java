/** What history tells as known at one cut-off; nothing in it is concluded. */
@NullMarked
package dev.sunthread.genealogy.records;

import org.jspecify.annotations.NullMarked;
