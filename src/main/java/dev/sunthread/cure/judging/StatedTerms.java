package dev.sunthread.cure.judging;

import dev.sunthread.catalog.recipe.Degree;
import dev.sunthread.catalog.recipe.Ramp;
import dev.sunthread.catalog.recipe.RecipeTerms;
import dev.sunthread.catalog.recipe.Recording;
import dev.sunthread.cure.kinetics.Arrhenius;
import dev.sunthread.cure.kinetics.Autocatalytic;
import dev.sunthread.cure.kinetics.Diffusion;
import dev.sunthread.cure.kinetics.EquivalentTime;
import dev.sunthread.cure.kinetics.Kinetics;
import dev.sunthread.cure.kinetics.NthOrder;
import dev.sunthread.cure.profile.RecordingRule;
import dev.sunthread.cure.recipe.DwellTerms;
import dev.sunthread.cure.recipe.LightTerms;
import dev.sunthread.cure.recipe.SensorRule;
import dev.sunthread.cure.recipe.Terms;
import dev.sunthread.cure.recipe.ThermalTerms;
import dev.sunthread.cure.recipe.ThermalValue;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What a revision of a recipe states, as terms that runs are judged by. */
public final class StatedTerms {

    private StatedTerms() {}

    /** @throws IllegalArgumentException if nothing is stated */
    public static Terms of(RecipeTerms stated) {
        if (stated.thermal() != null) {
            return thermal(stated.thermal());
        }
        if (stated.light() != null) {
            return light(stated.light());
        }
        if (stated.dwell() != null) {
            return dwell(stated.dwell());
        }
        throw new IllegalArgumentException("the revision states nothing");
    }

    private static Terms thermal(dev.sunthread.catalog.recipe.ThermalTerms stated) {
        List<ThermalValue> values = new ArrayList<>();
        if (stated.soak() != null) {
            values.add(new ThermalValue.Soak(
                    stated.soak().window().span(), stated.soak().minutes().limits()));
        }
        if (stated.peak() != null) {
            values.add(new ThermalValue.Peak(stated.peak().limits()));
        }
        addRamp(values, false, stated.heating());
        addRamp(values, true, stated.cooling());
        if (stated.equivalentTime() != null) {
            values.add(new ThermalValue.Equivalent(
                    new EquivalentTime(
                            stated.equivalentTime().energy().doubleValue(),
                            stated.equivalentTime().reference().doubleValue()),
                    stated.equivalentTime().minutes().limits()));
        }
        if (stated.degree() != null) {
            values.add(degree(stated.degree()));
        }
        return new ThermalTerms(SensorRule.valueOf(stated.sensors().name()), values, recording(stated.recording()));
    }

    private static void addRamp(List<ThermalValue> values, boolean cooling, @Nullable Ramp stated) {
        if (stated != null) {
            values.add(new ThermalValue.Ramp(
                    cooling, stated.over().doubleValue(), stated.perMinute().limits()));
        }
    }

    private static ThermalValue degree(Degree stated) {
        return new ThermalValue.Degree(
                kinetics(stated), or0(stated.start()), stated.degree().limits());
    }

    private static Kinetics kinetics(Degree stated) {
        double n = stated.n().doubleValue();
        Degree.Slowing slowing = stated.diffusion();
        Diffusion diffusion = slowing == null
                ? Diffusion.NONE
                : new Diffusion(
                        slowing.sharpness().doubleValue(),
                        slowing.atZero().doubleValue(),
                        slowing.perKelvin().doubleValue());
        return stated.k2() == null && slowing == null
                ? new NthOrder(rate(stated.k1()), n)
                : new Autocatalytic(rate(stated.k1()), rate(stated.k2()), or0(stated.m()), n, diffusion);
    }

    private static Arrhenius rate(Degree.@Nullable Rate stated) {
        return stated == null
                ? new Arrhenius(0, 0)
                : new Arrhenius(
                        stated.perSecond().doubleValue(), stated.energy().doubleValue());
    }

    private static Terms light(dev.sunthread.catalog.recipe.LightTerms stated) {
        return new LightTerms(
                stated.dose().limits(),
                stated.irradiance() == null ? null : stated.irradiance().limits(),
                stated.band(),
                stated.lampHours() == null ? null : stated.lampHours().doubleValue(),
                stated.radiometerHours() == null
                        ? null
                        : stated.radiometerHours().doubleValue(),
                recording(stated.recording()));
    }

    private static Terms dwell(dev.sunthread.catalog.recipe.DwellTerms stated) {
        return new DwellTerms(
                stated.hours().limits(),
                stated.temperature().span(),
                stated.humidity() == null ? null : stated.humidity().span(),
                recording(stated.recording()));
    }

    private static RecordingRule recording(Recording stated) {
        return new RecordingRule(
                stated.longestGap().doubleValue(), stated.fastestChange().doubleValue());
    }

    private static double or0(@Nullable BigDecimal stated) {
        return stated == null ? 0 : stated.doubleValue();
    }
}
