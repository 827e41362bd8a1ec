/** Pages for signing in, for one's own account, and for administrators. */
@NullMarked
package dev.sunthread.access.web;

import org.jspecify.annotations.NullMarked;
