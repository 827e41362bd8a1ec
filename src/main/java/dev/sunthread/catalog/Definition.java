package dev.sunthread.catalog;

import dev.sunthread.ledger.Kind;

/** A kind that releases a definition: what is released is never changed, only followed by a next revision. */
interface Definition<B> extends Kind<B> {

    @Override
    default boolean takesEffectLater() {
        return true;
    }

    @Override
    default boolean withdrawable() {
        return false;
    }
}
