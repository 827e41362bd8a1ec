package dev.sunthread.station.work;

import java.util.Set;

/** A position of a unit that is empty, and the numbers of the items that go there. */
record Place(String position, Set<String> items) {}
