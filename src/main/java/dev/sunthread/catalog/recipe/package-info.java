/** What a revision of a recipe states for computation; every part of it may be absent. */
@NullMarked
@NamedInterface("recipe")
package dev.sunthread.catalog.recipe;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
