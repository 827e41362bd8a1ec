package dev.sunthread.electrical.judging;

import dev.sunthread.catalog.specification.SafetyTerms.AreaRule;
import dev.sunthread.catalog.specification.TranslationTerms;
import dev.sunthread.electrical.curve.CurveMethod;
import dev.sunthread.electrical.curve.PowerMethod;
import dev.sunthread.electrical.terms.CurveQuantity;
import dev.sunthread.electrical.terms.CurveTerms;
import dev.sunthread.electrical.terms.DarkQuantity;
import dev.sunthread.electrical.terms.DarkTerms;
import dev.sunthread.electrical.terms.SafetyQuantity;
import dev.sunthread.electrical.terms.SafetyTerms;
import dev.sunthread.electrical.terms.SpecificationTerms;
import dev.sunthread.electrical.translate.Conditions;
import dev.sunthread.electrical.translate.Procedure1;
import dev.sunthread.electrical.translate.Procedure2Of2009;
import dev.sunthread.electrical.translate.Procedure2Of2021;
import dev.sunthread.electrical.translate.SeriesResistance;
import dev.sunthread.electrical.translate.Translation;
import dev.sunthread.kernel.verdict.Limits;
import java.math.BigDecimal;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** What a revision of a specification states, as terms that tests are judged by. */
public final class StatedTerms {

    private StatedTerms() {}

    public static SpecificationTerms of(dev.sunthread.catalog.specification.SpecificationTerms stated) {
        return new SpecificationTerms(
                stated.curves().stream().map(StatedTerms::curve).toList(),
                stated.dark().stream().map(StatedTerms::dark).toList(),
                stated.safety().stream().map(StatedTerms::safety).toList());
    }

    private static CurveTerms curve(dev.sunthread.catalog.specification.CurveTerms stated) {
        PowerMethod power = stated.powerOrder() == null || stated.powerPoints() == null
                ? PowerMethod.LEAST_SQUARES
                : new PowerMethod(stated.powerOrder(), stated.powerPoints());
        CurveMethod method = new CurveMethod(
                power,
                Objects.requireNonNullElse(stated.shuntPoints(), CurveMethod.USUAL.shuntPoints()),
                Objects.requireNonNullElse(stated.seriesPoints(), CurveMethod.USUAL.seriesPoints()));
        return new CurveTerms(
                stated.sweep(),
                method,
                stated.translation() == null ? null : translation(stated.translation()),
                stated.limits().stream()
                        .map(limit -> new CurveTerms.Limited(
                                CurveQuantity.valueOf(limit.quantity().name()),
                                limit.bounds().limits()))
                        .toList());
    }

    private static Translation translation(TranslationTerms stated) {
        double alpha = stated.alpha().doubleValue();
        double beta = stated.beta().doubleValue();
        Conditions to = new Conditions(
                stated.toIrradiance().doubleValue(), stated.toCelsius().doubleValue());
        SeriesResistance series = new SeriesResistance(stated.series().doubleValue(), or0(stated.kappa()));
        return switch (stated.procedure()) {
            case ONE_OF_2009_AND_2021 -> new Procedure1(to, alpha, beta, series.ohms(), series.perKelvin());
            case TWO_OF_2009 -> new Procedure2Of2009(to, alpha, beta, or0(stated.logarithmic()), series);
            case TWO_OF_2021 ->
                new Procedure2Of2021(
                        alpha,
                        beta,
                        or0(stated.openCircuit()),
                        new Procedure2Of2021.LightFactors(or0(stated.logarithmic()), or0(stated.quadratic())),
                        series);
        };
    }

    private static DarkTerms dark(dev.sunthread.catalog.specification.DarkTerms stated) {
        return new DarkTerms(
                stated.sweep(),
                stated.current().doubleValue(),
                Objects.requireNonNullElse(stated.points(), DarkTerms.USUAL_POINTS),
                stated.limits().stream()
                        .map(limit -> new DarkTerms.Limited(
                                DarkQuantity.valueOf(limit.quantity().name()),
                                limit.bounds().limits()))
                        .toList());
    }

    private static SafetyTerms safety(dev.sunthread.catalog.specification.SafetyTerms stated) {
        Limits limits = stated.bounds().limits();
        AreaRule rule = stated.area();
        return new SafetyTerms(
                SafetyQuantity.valueOf(stated.quantity().name()),
                rule == null
                        ? limits
                        : SafetyTerms.insulation(rule.squareMetres(), rule.upTo(), limits, rule.timesArea()),
                stated.applied(),
                Objects.requireNonNullElse(stated.seconds(), BigDecimal.ZERO));
    }

    private static double or0(@Nullable BigDecimal stated) {
        return stated == null ? 0 : stated.doubleValue();
    }
}
