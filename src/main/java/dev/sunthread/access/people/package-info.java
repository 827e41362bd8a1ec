/** Persons with what they sign in by, and the delay after failed attempts. */
@NullMarked
package dev.sunthread.access.people;

import org.jspecify.annotations.NullMarked;
