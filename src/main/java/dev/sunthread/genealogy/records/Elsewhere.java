package dev.sunthread.genealogy.records;

import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceRef;

/** The recorded fact that a unit was put into a parent, shipped or scrapped, so that it may be on no carrier any more. */
public record Elsewhere(TraceRef unit, Moment at) {}
