/** Finding units and lots by what their labels say. */
@NullMarked
package dev.sunthread.web.search;

import org.jspecify.annotations.NullMarked;
