/** Ways to cure as revisions state them, and runs judged by them. Times in minutes where people read them. */
@NullMarked
package dev.sunthread.cure.recipe;

import org.jspecify.annotations.NullMarked;
