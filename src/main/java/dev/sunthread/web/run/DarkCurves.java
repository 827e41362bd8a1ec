package dev.sunthread.web.run;

import dev.sunthread.electrical.curve.Curve;
import dev.sunthread.electrical.curve.DarkCurve;
import dev.sunthread.electrical.terms.DarkTerms;
import dev.sunthread.electrical.terms.Swept;
import dev.sunthread.kernel.verdict.Digit;
import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.web.chart.ChartDraft;
import java.util.List;

/** Draws sweeps without light and computes what they say as measured. */
final class DarkCurves {

    private static final int POINTS = DarkTerms.USUAL_POINTS;

    private DarkCurves() {}

    /** @throws dev.sunthread.kernel.verdict.Unusable if nothing can be made of the sweep */
    static TestCurve of(Swept swept, List<TestCurve.Point> points) {
        Curve curve = Curve.dark(swept.volts(), swept.amperes());
        double highest = curve.amperes(curve.size() - 1);
        DarkCurve numbers = DarkCurve.of(curve, highest, POINTS);
        ChartDraft chart = new ChartDraft(
                        Phrase.of("chart.current"), Phrase.of("chart.volts"), Phrase.of("chart.amperes"))
                .line(Phrase.of("chart.measured"), curve.volts(), curve.amperes());
        return new TestCurve(
                swept.name(),
                Phrase.of("test-run.dark"),
                List.of(chart.placed()),
                List.of(
                        TestCurves.number(Phrase.of("test-run.forward", Digit.plain(highest)), numbers.forward(), "V"),
                        TestCurves.number(Phrase.of("judged.dark.shunt-slope"), numbers.shunt(), "ohm"),
                        TestCurves.number(Phrase.of("judged.dark.series-slope"), numbers.series(), "ohm")),
                List.of(),
                points,
                Phrase.of("test-run.dark-method", String.valueOf(POINTS)),
                curve.remarks(),
                null);
    }
}
