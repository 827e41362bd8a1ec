/** What a scope stands for: suspects with the instants they count since. */
@NullMarked
package dev.sunthread.genealogy.scope;

import org.jspecify.annotations.NullMarked;
