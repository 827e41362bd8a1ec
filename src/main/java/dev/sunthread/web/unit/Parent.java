package dev.sunthread.web.unit;

import dev.sunthread.kernel.UnitId;
import java.time.OffsetDateTime;

/** A unit that another is inside now, the position it is in, and since when. */
public record Parent(long unit, UnitId id, String level, String position, OffsetDateTime since) {}
