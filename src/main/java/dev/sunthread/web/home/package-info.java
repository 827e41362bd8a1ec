/** The start page, and the lists behind its counts: holds, what expires, lots that wait, units in process. */
@NullMarked
package dev.sunthread.web.home;

import org.jspecify.annotations.NullMarked;
