/** The page of one container: what is in it, where it is, how long it was warm, and all that happened to it. */
@NullMarked
package dev.sunthread.web.container;

import org.jspecify.annotations.NullMarked;
