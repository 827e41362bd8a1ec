/** The page of one piece of equipment: how it was checked, what was done with it, and what was judged when. */
@NullMarked
package dev.sunthread.web.equipment;

import org.jspecify.annotations.NullMarked;
