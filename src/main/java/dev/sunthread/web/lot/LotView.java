package dev.sunthread.web.lot;

import org.jspecify.annotations.Nullable;

/** Which pages of a lot's lists an address asks for, each from 1. */
public record LotView(
        @Nullable Integer uses,
        @Nullable Integer parts,
        @Nullable Integer containers) {}
