/** What is in what, and what a happening gives to whatever is inside and around. */
@NullMarked
package dev.sunthread.genealogy.reach;

import org.jspecify.annotations.NullMarked;
