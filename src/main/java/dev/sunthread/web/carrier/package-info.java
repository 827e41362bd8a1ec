/** The page of one carrier: what is and was on it, and where it was. */
@NullMarked
package dev.sunthread.web.carrier;

import org.jspecify.annotations.NullMarked;
