package dev.sunthread.catalog;

import dev.sunthread.ledger.Fact;
import org.jspecify.annotations.Nullable;

/**
 * A check of equipment was recorded or taken back, which may change what its runs are worth; published within the door's
 * transaction.
 *
 * @param fact the check that is being recorded; absent if one was taken back
 * @param bad whether it found the equipment bad
 */
public record EquipmentChecked(@Nullable Fact<?> fact, long equipment, String code, boolean bad) {}
