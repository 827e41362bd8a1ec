package dev.sunthread.catalog;

import java.util.List;

/**
 * A position of a unit, or a component of a lot, as a released structure has it.
 *
 * @param items what may go there, the approved alternates behind the first
 */
public record StructurePlace(String position, List<Item> items) {}
