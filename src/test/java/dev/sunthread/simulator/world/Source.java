package dev.sunthread.simulator.world;

import org.jspecify.annotations.Nullable;

/** Material as people take it: a lot, or one container of it. */
public record Source(String lot, @Nullable String container) {

    /** What the material is drawn from. */
    Thing vessel() {
        return container == null ? Thing.lot(lot) : Thing.container(container);
    }
}
