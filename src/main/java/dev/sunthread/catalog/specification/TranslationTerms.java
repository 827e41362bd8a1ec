package dev.sunthread.catalog.specification;

import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** A procedure of IEC 60891 with its coefficients, to 1000 W/m2 and 25 degrees Celsius. */
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
        BigDecimal openCircuit) {

    /** Which procedure of which edition. */
    public enum Procedure {
        ONE_OF_2009_AND_2021,
        TWO_OF_2009,
        TWO_OF_2021
    }

    public TranslationTerms {
        if (procedure != Procedure.ONE_OF_2009_AND_2021 && logarithmic == null) {
            throw new Contradiction("logarithmic", "is missing for procedure 2", "Give the factor of the irradiance");
        }
        if (procedure == Procedure.TWO_OF_2021 && openCircuit == null) {
            throw new Contradiction(
                    "openCircuit", "is missing for procedure 2 of 2021", "Give the open-circuit voltage");
        }
    }
}
