package dev.sunthread.web.unit;

import org.jspecify.annotations.Nullable;

/**
 * Which parts of a unit's page an address asks for.
 *
 * @param built {@code now}, {@code ever} or the number of a shipment
 * @param happenings the page of its timeline, from 1
 */
public record UnitView(@Nullable String built, @Nullable Integer happenings) {}
