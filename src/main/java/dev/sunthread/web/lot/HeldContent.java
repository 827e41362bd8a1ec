package dev.sunthread.web.lot;

import dev.sunthread.materials.stock.Balance;
import dev.sunthread.materials.stock.ContainerState;

/** A container of a lot with what it should still hold. */
public record HeldContent(ContainerState state, Balance balance) {}
