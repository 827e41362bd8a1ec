package dev.sunthread.electrical.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.sunthread.catalog.recipe.Bounds;
import dev.sunthread.catalog.specification.CurveTerms;
import dev.sunthread.catalog.specification.SpecificationTerms;
import dev.sunthread.catalog.specification.TranslationTerms;
import dev.sunthread.catalog.specification.TranslationTerms.Procedure;
import dev.sunthread.electrical.curve.Curve.Point;
import dev.sunthread.electrical.translate.Conditions;
import dev.sunthread.electrical.translate.Translation;
import dev.sunthread.ledger.body.Contradiction;
import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Limits may be stated for any light and temperature, such as the two sets of IEC 62670-1 for concentrators. */
class StatedConditionsTests {

    @Test
    void withoutAnyAreTheStandardOnes() {
        assertThat(stated(Procedure.TWO_OF_2009, null, null, null, null).to()).isEqualTo(Conditions.STANDARD);
    }

    /** Concentrator standard test conditions of IEC 62670-1: 1000 W/m2 of direct light, cells of 25 degrees Celsius. */
    @Test
    void testConditionsOfConcentratorsAreDirectLightAndTheTemperatureOfCells() {
        assertThat(stated(Procedure.ONE_OF_2009_AND_2021, "1000", "25", null, null)
                        .to())
                .isEqualTo(Conditions.STANDARD);
    }

    /** Concentrator standard operating conditions, from memory: 900 W/m2 of direct light, air of 20 degrees Celsius. */
    @Test
    void operatingConditionsOfConcentratorsAreDirectLightAndTheTemperatureOfTheAir() {
        Translation translation = stated(Procedure.ONE_OF_2009_AND_2021, "900", null, "20", "45");
        assertThat(translation.to()).isEqualTo(new Conditions(900, 65));
        // by hand: 4 A (900 / 1000) + 0.002 A/K 40 K = 3.68 A; 2.5 V + 0.01 ohm 0.32 A - 0.004 V/K 40 K
        Point moved = translation.translate(new Point(2.5, 4), new Translation.Measured(Conditions.STANDARD, 4, 3));
        assertThat(moved.amperes()).isCloseTo(3.68, within(1e-12));
        assertThat(moved.volts()).isCloseTo(2.5 + 0.01 * 0.32 - 0.16, within(1e-12));
    }

    @Test
    void refusesWhatDoesNotGoTogether() {
        assertThatThrownBy(() -> stated(Procedure.TWO_OF_2021, "900", null, null, null))
                .isInstanceOf(Contradiction.class)
                .hasMessageContaining("2021");
        assertThatThrownBy(() -> stated(Procedure.TWO_OF_2009, "900", "25", "20", "45"))
                .isInstanceOf(Contradiction.class);
        assertThatThrownBy(() -> stated(Procedure.TWO_OF_2009, "900", null, "20", null))
                .isInstanceOf(Contradiction.class);
        assertThatThrownBy(() -> stated(Procedure.TWO_OF_2009, "0", null, null, null))
                .isInstanceOf(Contradiction.class);
    }

    private static Translation stated(
            Procedure procedure,
            @Nullable String irradiance,
            @Nullable String cell,
            @Nullable String ambient,
            @Nullable String warmer) {
        TranslationTerms translation = new TranslationTerms(
                procedure,
                new BigDecimal("0.002"),
                new BigDecimal("-0.004"),
                new BigDecimal("0.01"),
                null,
                new BigDecimal("0.06"),
                null,
                new BigDecimal("3"),
                number(irradiance),
                number(cell),
                number(ambient),
                number(warmer));
        CurveTerms curve = new CurveTerms(
                "light",
                null,
                null,
                null,
                null,
                translation,
                List.of(new CurveTerms.QuantityBounds(
                        CurveTerms.Quantity.MAXIMUM_POWER, new Bounds(BigDecimal.ONE, null, null))));
        return Objects.requireNonNull(StatedTerms.of(new SpecificationTerms(List.of(curve), List.of(), List.of()))
                .curves()
                .get(0)
                .translation());
    }

    private static @Nullable BigDecimal number(@Nullable String text) {
        return text == null ? null : new BigDecimal(text);
    }
}
