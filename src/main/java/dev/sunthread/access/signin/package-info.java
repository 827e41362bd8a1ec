/** How a request comes to have a caller, and what it may do then. */
@NullMarked
package dev.sunthread.access.signin;

import org.jspecify.annotations.NullMarked;
