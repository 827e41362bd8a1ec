package dev.sunthread.genealogy.answer;

import dev.sunthread.kernel.UnitId;
import org.jspecify.annotations.Nullable;

/** A node as people call it. */
record Named(
        String kind,
        String level,
        String item,
        String name,
        @Nullable String issuer) {

    /** The name inside a sentence. */
    String words() {
        return issuer == null
                ? level + " " + name
                : level + " " + UnitId.of(issuer, item, name).serial();
    }
}
