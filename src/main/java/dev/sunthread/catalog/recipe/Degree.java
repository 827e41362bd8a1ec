package dev.sunthread.catalog.recipe;

import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * Degree of cure by kinetics: of nth order, {@code k1 (1 - a)^n}, or autocatalytic,
 * {@code (k1 + k2 a^m) (1 - a)^n}, slowed by diffusion or not.
 */
public record Degree(
        @Field("The rate k1; absent if only what has reacted makes it react") @Nullable
        Rate k1,

        @Field("The rate k2 of what has reacted; absent for a reaction of nth order") @Nullable
        Rate k2,

        @Field("The exponent m of what has reacted") @Nullable
        BigDecimal m,

        @Field("The exponent n of what is left") BigDecimal n,

        @Field("How diffusion slows it; absent if it does not") @Nullable
        Slowing diffusion,

        @Field("The degree it starts from; absent for none") @Nullable
        BigDecimal start,

        @Field("The degree of cure that is good, from 0 to 1")
        Bounds degree) {

    public Degree {
        if (k1 == null && k2 == null) {
            throw new Contradiction("k1", "is missing and k2 is too", "Give the rate of the reaction");
        }
        if ((k2 == null) != (m == null)) {
            throw new Contradiction("m", "goes with k2 only", "Give both for an autocatalytic reaction, or neither");
        }
    }

    /** A rate that grows with temperature by Arrhenius. */
    public record Rate(
            @Field(value = "The factor, per second", positive = true)
            BigDecimal perSecond,

            @Field("The activation energy, in J/mol") BigDecimal energy) {}

    /** {@code 1 + exp(C (a - (a0 + aT T)))} with T in kelvin. */
    public record Slowing(
            @Field(value = "The factor C", positive = true) BigDecimal sharpness,

            @Field("The degree a0 at no temperature") BigDecimal atZero,
            @Field("The change aT of it per kelvin") BigDecimal perKelvin) {}
}
