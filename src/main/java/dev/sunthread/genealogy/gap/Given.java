package dev.sunthread.genealogy.gap;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.records.Happening;
import java.util.Set;

/** A happening that reached a unit, how surely, and the items it took in. */
record Given(Happening happening, Certainty certainty, Set<Long> items) {}
