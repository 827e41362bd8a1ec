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
import dev.sunthread.kernel.Refused;
import dev.sunthread.kernel.verdict.Digit;
import dev.sunthread.web.chart.Chart;
import dev.sunthread.web.chart.ChartDraft;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
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
            return seen(swept, Curve.of(swept.volts(), swept.amperes()));
        } catch (Refused unusable) {
            return new TestCurve(
                    swept.name(),
                    words(swept.conditions()),
                    List.of(),
                    List.of(),
                    points(swept),
                    "",
                    List.of(),
                    unusable.reason() + ". " + unusable.remedy());
        }
    }

    private static TestCurve seen(Swept swept, Curve curve) {
        CurveNumbers numbers = CurveNumbers.of(curve, METHOD);
        List<TestCurve.Number> told = new ArrayList<>(numbers(numbers));
        Optional<FittedDiode> fit = fit(curve, Residual.MODEL_CURRENT);
        fit.ifPresent(found -> told.addAll(fitted(found)));
        fit(curve, Residual.IMPLICIT).ifPresent(found -> told.addAll(fitted(found)));
        return new TestCurve(
                swept.name(),
                words(swept.conditions()),
                charts(curve, fit),
                told,
                points(swept),
                METHOD.words(),
                numbers.remarks(),
                "");
    }

    private static Optional<FittedDiode> fit(Curve curve, Residual residual) {
        try {
            return Optional.of(DiodeFit.of(curve, residual));
        } catch (Refused noFit) {
            return Optional.empty();
        }
    }

    private static List<TestCurve.Number> numbers(CurveNumbers numbers) {
        return List.of(
                number("Short-circuit current", numbers.shortCircuit(), "A"),
                number("Open-circuit voltage", numbers.openCircuit(), "V"),
                number("Maximum power", numbers.power().watts(), "W"),
                number("Voltage of it", numbers.power().volts(), "V"),
                number("Current of it", numbers.power().amperes(), "A"),
                number("Fill factor", numbers.fillFactor(), "of 1"),
                number("Slope resistance at short circuit", numbers.shunt(), "ohm"),
                number("Slope resistance at open circuit", numbers.series(), "ohm"));
    }

    private static List<TestCurve.Number> fitted(FittedDiode fit) {
        String by = ", one diode by " + fit.residual().words();
        return List.of(
                number("Photo current" + by, fit.diode().photo(), "A"),
                number("Saturation current" + by, fit.diode().saturation(), "A"),
                number("Voltage slope of the diodes" + by, fit.diode().slope(), "V"),
                number("Series resistance" + by, fit.diode().series(), "ohm"),
                number("Shunt resistance" + by, fit.diode().shunt(), "ohm"),
                number("Root mean square" + by, fit.rootMeanSquare(), "A"));
    }

    private static TestCurve.Number number(String name, double value, String unit) {
        return new TestCurve.Number(name, Digit.plain(value), unit);
    }

    private static List<Chart> charts(Curve curve, Optional<FittedDiode> fit) {
        ChartDraft current = new ChartDraft("Current over voltage; the table below tells the same", "volts", "amperes")
                .line("measured", curve.volts(), curve.amperes());
        double[] watts =
                IntStream.range(0, curve.size()).mapToDouble(curve::watts).toArray();
        ChartDraft power = new ChartDraft("Power over voltage; the table below tells the same", "volts", "watts")
                .line("measured", curve.volts(), watts);
        fit.ifPresent(found -> {
            double[] volts = between(curve.volts(0), curve.volts(curve.size() - 1));
            double[] amperes =
                    DoubleStream.of(volts).map(found.diode()::current).toArray();
            current.line("one diode", volts, amperes);
            power.line(
                    "one diode",
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

    private static String words(@Nullable Conditions conditions) {
        return conditions == null
                ? "irradiance or temperature not recorded"
                : Digit.plain(conditions.irradiance()) + " W/m2, cells at " + Digit.plain(conditions.celsius())
                        + " degC";
    }
}
