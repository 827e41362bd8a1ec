package dev.sunthread.web.run;

import dev.sunthread.electrical.curve.Curve;
import dev.sunthread.electrical.curve.CurveMethod;
import dev.sunthread.electrical.curve.CurveNumbers;
import dev.sunthread.electrical.diode.DiodeFit;
import dev.sunthread.electrical.diode.FittedDiode;
import dev.sunthread.electrical.diode.Residual;
import dev.sunthread.electrical.judging.RawTests;
import dev.sunthread.electrical.terms.Swept;
import dev.sunthread.electrical.translate.Conditions;
import dev.sunthread.kernel.verdict.Digit;
import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Unusable;
import dev.sunthread.web.chart.Chart;
import dev.sunthread.web.chart.ChartDraft;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;

/** Draws the sweeps of a test and computes what they say as measured. */
@Component
class TestCurves {

    private static final CurveMethod METHOD = CurveMethod.USUAL;
    private static final int DRAWN = 200;

    private final RawTests raw;

    TestCurves(RawTests raw) {
        this.raw = raw;
    }

    List<TestCurve> of(long entry) {
        return Optional.ofNullable(raw.of(List.of(entry)).get(entry))
                .map(test -> test.sweeps().stream().map(TestCurves::curve).toList())
                .orElse(List.of());
    }

    private static TestCurve curve(Swept swept) {
        try {
            return swept.dark()
                    ? DarkCurves.of(swept, points(swept))
                    : seen(swept, Curve.of(swept.volts(), swept.amperes()));
        } catch (Unusable unusable) {
            return new TestCurve(
                    swept.name(),
                    words(swept),
                    List.of(),
                    List.of(),
                    List.of(),
                    points(swept),
                    null,
                    List.of(),
                    unusable);
        }
    }

    private static TestCurve seen(Swept swept, Curve curve) {
        CurveNumbers numbers = CurveNumbers.of(curve, METHOD);
        List<FittedDiode> fits = Stream.of(Residual.values())
                .flatMap(residual -> fit(curve, residual).stream())
                .toList();
        return new TestCurve(
                swept.name(),
                words(swept),
                charts(curve, fits.stream().findFirst()),
                numbers(numbers),
                fits.stream().map(TestCurves::fitted).toList(),
                points(swept),
                METHOD.words(),
                numbers.remarks(),
                null);
    }

    private static Optional<FittedDiode> fit(Curve curve, Residual residual) {
        try {
            return Optional.of(DiodeFit.of(curve, residual));
        } catch (Unusable noFit) {
            return Optional.empty();
        }
    }

    private static List<TestCurve.Number> numbers(CurveNumbers numbers) {
        return List.of(
                number(Phrase.of("judged.curve.isc"), numbers.shortCircuit(), "A"),
                number(Phrase.of("judged.curve.voc"), numbers.openCircuit(), "V"),
                number(Phrase.of("judged.curve.pmax"), numbers.power().watts(), "W"),
                number(Phrase.of("test-run.voltage-of-it"), numbers.power().volts(), "V"),
                number(Phrase.of("test-run.current-of-it"), numbers.power().amperes(), "A"),
                number(Phrase.of("judged.curve.ff"), numbers.fillFactor(), ""),
                number(Phrase.of("judged.curve.shunt-slope"), numbers.shunt(), "ohm"),
                number(Phrase.of("judged.curve.series-slope"), numbers.series(), "ohm"));
    }

    private static TestCurve.Fit fitted(FittedDiode fit) {
        return new TestCurve.Fit(
                fit.residual().words(),
                List.of(
                        number(Phrase.of("test-run.diode.photo"), fit.diode().photo(), "A"),
                        number(
                                Phrase.of("test-run.diode.saturation"),
                                fit.diode().saturation(),
                                "A"),
                        number(Phrase.of("test-run.diode.slope"), fit.diode().slope(), "V"),
                        number(Phrase.of("test-run.diode.series"), fit.diode().series(), "ohm"),
                        number(Phrase.of("test-run.diode.shunt"), fit.diode().shunt(), "ohm"),
                        number(Phrase.of("test-run.diode.rms"), fit.rootMeanSquare(), "A")));
    }

    static TestCurve.Number number(Phrase name, double value, String unit) {
        return new TestCurve.Number(name, Digit.plain(value), unit);
    }

    private static List<Chart> charts(Curve curve, Optional<FittedDiode> fit) {
        ChartDraft current = new ChartDraft(
                        Phrase.of("chart.current"), Phrase.of("chart.volts"), Phrase.of("chart.amperes"))
                .line(Phrase.of("chart.measured"), curve.volts(), curve.amperes());
        double[] watts =
                IntStream.range(0, curve.size()).mapToDouble(curve::watts).toArray();
        ChartDraft power = new ChartDraft(Phrase.of("chart.power"), Phrase.of("chart.volts"), Phrase.of("chart.watts"))
                .line(Phrase.of("chart.measured"), curve.volts(), watts);
        fit.ifPresent(found -> {
            double[] volts = between(curve.volts(0), curve.volts(curve.size() - 1));
            double[] amperes =
                    DoubleStream.of(volts).map(found.diode()::current).toArray();
            current.line(Phrase.of("chart.one-diode"), volts, amperes);
            power.line(
                    Phrase.of("chart.one-diode"),
                    volts,
                    IntStream.range(0, DRAWN)
                            .mapToDouble(i -> volts[i] * amperes[i])
                            .toArray());
        });
        return List.of(current.placed(), power.placed());
    }

    private static double[] between(double from, double to) {
        return IntStream.range(0, DRAWN)
                .mapToDouble(i -> from + (to - from) * i / (DRAWN - 1))
                .toArray();
    }

    private static List<TestCurve.Point> points(Swept swept) {
        return IntStream.range(0, swept.volts().length)
                .mapToObj(i -> new TestCurve.Point(
                        swept.volts()[i], swept.amperes()[i], swept.volts()[i] * swept.amperes()[i]))
                .toList();
    }

    private static Phrase words(Swept swept) {
        Conditions conditions = swept.conditions();
        if (swept.dark()) {
            return Phrase.of("test-run.dark");
        }
        return conditions == null
                ? Phrase.of("test-run.no-conditions")
                : Phrase.of(
                        "test-run.conditions", Digit.plain(conditions.irradiance()), Digit.plain(conditions.celsius()));
    }
}
