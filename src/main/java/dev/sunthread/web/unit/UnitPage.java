package dev.sunthread.web.unit;

import dev.sunthread.holds.OpenHold;
import dev.sunthread.inbox.OpenFinding;
import dev.sunthread.kernel.UnitId;
import dev.sunthread.web.Paged;
import java.util.List;

/**
 * Everything the page of a unit shows, at one cut-off.
 *
 * @param place where it is, in words
 * @param parents the units it is inside now, the nearest first
 * @param built what is, was or ever was in its positions
 */
public record UnitPage(
        UnitId id,
        String level,
        String itemName,
        String place,
        List<OpenHold> holds,
        List<OpenFinding> findings,
        List<Parent> parents,
        AsBuilt built,
        List<UsedLot> uses,
        Paged<Told> timeline,
        List<Shipped> shipments) {}
