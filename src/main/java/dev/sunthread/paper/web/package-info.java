/** Pages that print blank records and enter them. */
@NullMarked
package dev.sunthread.paper.web;

import org.jspecify.annotations.NullMarked;
