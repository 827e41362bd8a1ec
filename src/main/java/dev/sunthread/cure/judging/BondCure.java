package dev.sunthread.cure.judging;

import org.jspecify.annotations.Nullable;

/**
 * A cure as it reached one bond.
 *
 * @param entry the entry that recorded it
 * @param position where in the equipment the bond was, if known
 */
public record BondCure(long entry, @Nullable String position) {}
