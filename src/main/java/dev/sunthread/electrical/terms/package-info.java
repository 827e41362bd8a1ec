/** What revisions of specifications demand of tests, and tests judged by them. */
@NullMarked
package dev.sunthread.electrical.terms;

import org.jspecify.annotations.NullMarked;
