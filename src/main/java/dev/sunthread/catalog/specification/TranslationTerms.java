package dev.sunthread.catalog.specification;

import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * A procedure of IEC 60891 with its coefficients, to the conditions that the limits are stated for: 1000 W/m2 and 25 degrees
 * Celsius unless others are stated, such as the direct light and the ambient temperature of concentrators.
 */
public record TranslationTerms(
        @Field("The procedure with its edition") Procedure procedure,

        @Field("Change of current with temperature: A/K for procedure 1, per kelvin for procedure 2")
        BigDecimal alpha,

        @Field("Change of voltage with temperature: V/K for procedure 1, per kelvin for procedure 2")
        BigDecimal beta,

        @Field("The inner series resistance, in ohms") BigDecimal series,

        @Field("The change of it, in ohm/K; absent for none") @Nullable
        BigDecimal kappa,

        @Field("The factor of the logarithm of irradiance, for procedure 2: a of 2009, B1 of 2021") @Nullable
        BigDecimal logarithmic,

        @Field("The factor of its square, B2, for procedure 2 of 2021") @Nullable
        BigDecimal quadratic,

        @Field("The open-circuit voltage at 1000 W/m2 and 25 degrees Celsius, for procedure 2 of 2021") @Nullable
        BigDecimal openCircuit,

        @Field("The irradiance translated to, in W/m2, direct light for concentrators; absent for 1000") @Nullable
        BigDecimal irradiance,

        @Field("The temperature of the cells translated to, in degrees Celsius; absent for 25, or if ambient is stated")
        @Nullable
        BigDecimal cell,

        @Field("The temperature of the air around translated to, in degrees Celsius, with warmer") @Nullable
        BigDecimal ambient,

        @Field("By how many kelvins cells are warmer than the air under the irradiance translated to") @Nullable
        BigDecimal warmer) {

    /** Which procedure of which edition. */
    public enum Procedure {
        ONE_OF_2009_AND_2021,
        TWO_OF_2009,
        TWO_OF_2021
    }

    private static final BigDecimal BRIGHT = BigDecimal.valueOf(1000);
    private static final BigDecimal COOL = BigDecimal.valueOf(25);

    public TranslationTerms {
        if (irradiance != null && irradiance.signum() <= 0) {
            throw new Contradiction("irradiance", "is not above 0", "Give the light translated to in W/m2");
        }
        if ((ambient == null) != (warmer == null) || ambient != null && cell != null) {
            throw new Contradiction(
                    "ambient", "goes with warmer, and without cell", "Give cell, or ambient and warmer, or neither");
        }
        boolean standard = (irradiance == null || irradiance.compareTo(BRIGHT) == 0)
                && toCelsius(cell, ambient, warmer).compareTo(COOL) == 0;
        if (procedure == Procedure.TWO_OF_2021 && !standard) {
            throw new Contradiction(
                    "procedure",
                    "of 2021 goes to 1000 W/m2 and 25 degrees Celsius only",
                    "Give procedure 1, or procedure 2 of 2009, to translate to other conditions");
        }
        if (procedure != Procedure.ONE_OF_2009_AND_2021 && logarithmic == null) {
            throw new Contradiction("logarithmic", "is missing for procedure 2", "Give the factor of the irradiance");
        }
        if (procedure == Procedure.TWO_OF_2021 && openCircuit == null) {
            throw new Contradiction(
                    "openCircuit", "is missing for procedure 2 of 2021", "Give the open-circuit voltage");
        }
    }

    /** The irradiance translated to, in W/m2. */
    public BigDecimal toIrradiance() {
        return irradiance == null ? BRIGHT : irradiance;
    }

    /** The temperature of the cells translated to, in degrees Celsius. */
    public BigDecimal toCelsius() {
        return toCelsius(cell, ambient, warmer);
    }

    private static BigDecimal toCelsius(
            @Nullable BigDecimal cell, @Nullable BigDecimal ambient, @Nullable BigDecimal warmer) {
        if (ambient != null && warmer != null) {
            return ambient.add(warmer);
        }
        return cell == null ? COOL : cell;
    }
}
