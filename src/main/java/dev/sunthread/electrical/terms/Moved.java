package dev.sunthread.electrical.terms;

import dev.sunthread.electrical.curve.Curve;
import dev.sunthread.electrical.curve.Curve.Point;
import dev.sunthread.electrical.curve.CurveNumbers;
import dev.sunthread.electrical.curve.CurveSpans;
import dev.sunthread.electrical.translate.Conditions;
import dev.sunthread.electrical.translate.Translation;
import dev.sunthread.kernel.verdict.Span;
import dev.sunthread.kernel.verdict.Unusable;
import java.util.List;
import java.util.function.DoubleSupplier;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** A curve translated to other conditions; what its ends leave open by which it is translated is left open of each point. */
final class Moved {

    private final Translation translation;
    private final Conditions from;
    private @Nullable Unusable lacking;

    Moved(Translation translation, Conditions from) {
        this.translation = translation;
        this.from = from;
    }

    /** @throws Unusable if the procedure needs an end that the sweep does not reach */
    Curve of(Curve measured, CurveNumbers numbers) {
        CurveSpans spans = new CurveSpans(measured);
        double current = told(numbers::shortCircuit);
        double voltage = told(numbers::openCircuit);
        Span currents = left(spans::shortCircuit, current);
        Span voltages = left(spans::openCircuit, voltage);
        Curve moved = measured.moved(
                by(current, voltage),
                List.of(by(farthest(currents, current), voltage), by(current, farthest(voltages, voltage))));
        for (int i = 0; i < moved.size(); i++) {
            if (lacking != null && !Double.isFinite(moved.watts(i))) {
                throw lacking;
            }
        }
        return moved;
    }

    private UnaryOperator<Point> by(double shortCircuit, double openCircuit) {
        Translation.Measured under = new Translation.Measured(from, shortCircuit, openCircuit);
        return point -> translation.translate(point, under);
    }

    private double told(DoubleSupplier end) {
        try {
            return end.getAsDouble();
        } catch (Unusable unusable) {
            lacking = unusable;
            return Double.NaN;
        }
    }

    private static Span left(Supplier<Span> end, double told) {
        return Double.isNaN(told) ? new Span(0, 0) : end.get();
    }

    private static double farthest(Span span, double told) {
        if (Double.isNaN(told)) {
            return told;
        }
        return span.high() - told > told - span.low() ? span.high() : span.low();
    }
}
