package dev.sunthread.web.compare;

import dev.sunthread.kernel.UnitId;
import org.jspecify.annotations.Nullable;

/** Two units as an address or a form names them; an absent issuer is this plant; perhaps only what differs. */
public record UnitPair(
        @Nullable String leftItem,
        @Nullable String leftSerial,
        @Nullable String leftIssuer,
        @Nullable String rightItem,
        @Nullable String rightSerial,
        @Nullable String rightIssuer,
        @Nullable Boolean differing) {

    boolean isComplete() {
        return given(leftItem) && given(leftSerial) && given(rightItem) && given(rightSerial);
    }

    UnitId left() {
        return id(leftIssuer, leftItem, leftSerial);
    }

    UnitId right() {
        return id(rightIssuer, rightItem, rightSerial);
    }

    private static UnitId id(@Nullable String issuer, @Nullable String item, @Nullable String serial) {
        return UnitId.of(
                given(issuer) ? issuer : null,
                String.valueOf(item).strip(),
                String.valueOf(serial).strip());
    }

    private static boolean given(@Nullable String text) {
        return text != null && !text.isBlank();
    }
}
