/** The pages of stations and of the positions where material is loaded: what was there when, and what was done. */
@NullMarked
package dev.sunthread.web.station;

import org.jspecify.annotations.NullMarked;
