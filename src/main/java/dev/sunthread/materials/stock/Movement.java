package dev.sunthread.materials.stock;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * One happening that brought some of a lot or container in, took some out, or told how much was left.
 *
 * @param quantity how much, in its unit of measure; absent if nobody measured it
 * @param all whether it took all that was left, however much that was
 */
public record Movement(
        OffsetDateTime at,
        Way way,
        @Nullable BigDecimal quantity,
        @Nullable String unitOfMeasure,
        boolean all) {

    /** What a movement does to what is left. */
    enum Effect {
        BRINGS,
        TAKES,
        TELLS,
        NONE
    }

    /** Where a quantity came from or went. */
    public enum Way {
        RECEIVED(Effect.BRINGS),
        MADE_HERE(Effect.BRINGS),
        FILLED(Effect.BRINGS),
        USED(Effect.TAKES),
        WENT_INTO_OTHER_LOTS(Effect.TAKES),
        WASTED(Effect.TAKES),
        SAMPLED(Effect.TAKES),
        SCRAPPED(Effect.TAKES),
        RETURNED_TO_THE_SUPPLIER(Effect.TAKES),
        COUNTED(Effect.TELLS),
        ISSUED_WITHIN_THE_PLANT(Effect.NONE),
        BROUGHT_BACK_TO_THE_STORE(Effect.NONE);

        private final Effect effect;

        Way(Effect effect) {
            this.effect = effect;
        }

        Effect effect() {
            return effect;
        }

        /** The way in words. */
        public String words() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }
}
