package dev.sunthread.electrical.terms;

import dev.sunthread.electrical.curve.Curve.Point;
import dev.sunthread.electrical.diode.SingleDiode;
import java.util.Random;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.function.UnaryOperator;

/**
 * A curve that is known everywhere: voltage rises and current falls with a parameter from 0 to 1.
 *
 * @param at the point at a parameter
 */
record TrueCurve(DoubleFunction<Point> at) {

    /** What is swept. */
    enum Kind {
        CELL,
        STRING,
        BYPASSED
    }

    static TrueCurve of(Kind kind, Random random) {
        int cells = kind == Kind.CELL ? 1 : 4 + random.nextInt(12);
        double photo = 0.5 + random.nextDouble() * 7;
        double slope = 0.027 + random.nextDouble() * 0.06;
        double open = slope * (15 + random.nextDouble() * 20);
        double series = random.nextDouble() * 0.06 * open / photo;
        double conductance = random.nextDouble() * 0.04 * photo / open;
        if (kind != Kind.BYPASSED) {
            SingleDiode diode = new SingleDiode(
                    photo, photo / Math.expm1(open / slope), slope * cells, series * cells, conductance / cells);
            double from = -0.06 * open * cells;
            double to = open * cells * 1.1;
            return new TrueCurve(t -> {
                double volts = from + t * (to - from);
                return new Point(volts, diode.current(volts));
            });
        }
        double weak = photo * (0.4 + random.nextDouble() * 0.5);
        double saturation = photo / Math.expm1(open / slope);
        return new TrueCurve(t -> {
            double amperes = photo * (1 + conductance * 2) * (1 - t) - photo * 0.5 * t;
            double junction = (cells - 1) * volts(photo, saturation, slope, conductance, amperes)
                    + Math.max(-0.5, volts(weak, saturation, slope, conductance, amperes));
            return new Point(junction - amperes * series * cells, amperes);
        });
    }

    /** By tangents from above, which never overshoot as the current falls ever faster. */
    private static double volts(double photo, double saturation, double slope, double conductance, double amperes) {
        double at = slope * Math.log1p(2 * Math.max(photo, photo - amperes) / saturation);
        for (int i = 0; i < 60; i++) {
            double left = photo - saturation * Math.expm1(at / slope) - at * conductance - amperes;
            double step = left / (saturation / slope * Math.exp(at / slope) + conductance);
            at += step;
            if (Math.abs(step) < 1e-13) {
                break;
            }
        }
        return Math.max(-1000, at);
    }

    TrueCurve moved(UnaryOperator<Point> move) {
        return new TrueCurve(t -> move.apply(at.apply(t)));
    }

    double volts(double t) {
        return at.apply(t).volts();
    }

    double amperes(double t) {
        return at.apply(t).amperes();
    }

    /** Where a value that falls with the parameter is nought. */
    static double where(DoubleUnaryOperator falling) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < 50; i++) {
            double middle = (low + high) / 2;
            low = falling.applyAsDouble(middle) > 0 ? middle : low;
            high = falling.applyAsDouble(middle) > 0 ? high : middle;
        }
        return (low + high) / 2;
    }

    double atNoVoltage() {
        return where(t -> -volts(t));
    }

    double atNoCurrent() {
        return where(this::amperes);
    }

    /** By a grid that grows finer. */
    double watts() {
        double low = 0;
        double high = 1;
        double best = 0;
        double most = 0;
        for (int round = 0; round < 5; round++) {
            int parts = round == 0 ? 400 : 40;
            double step = (high - low) / parts;
            for (int i = 0; i <= parts; i++) {
                double t = low + i * step;
                Point point = at.apply(t);
                if (point.volts() * point.amperes() > most) {
                    most = point.volts() * point.amperes();
                    best = t;
                }
            }
            low = Math.max(0, best - step);
            high = Math.min(1, best + step);
        }
        return most;
    }

    /** The resistance of the slope at a parameter. */
    double ohms(double t) {
        double step = 1e-6;
        return -(volts(t + step) - volts(t - step)) / (amperes(t + step) - amperes(t - step));
    }
}
