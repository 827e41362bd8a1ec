/** What kept lines may mean: how each kind can carry matter, and what it contradicts. */
@NullMarked
package dev.sunthread.genealogy.line;

import org.jspecify.annotations.NullMarked;
