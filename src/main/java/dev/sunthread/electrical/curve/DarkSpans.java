package dev.sunthread.electrical.curve;

import dev.sunthread.kernel.verdict.Span;

/**
 * Between which values lies what a curve without light says. Turned upside down it never rises and nowhere bends upwards, as
 * one under light.
 */
public final class DarkSpans {

    private final Curve upright;
    private final Curve turned;
    private final double at;

    /** @param at the current at which the forward voltage is wanted, in amperes */
    public DarkSpans(Curve curve, double at) {
        this.upright = curve;
        this.turned = curve.moved(point -> new Curve.Point(point.volts(), -point.amperes()));
        this.at = at;
    }

    /** In volts. @throws dev.sunthread.kernel.verdict.Unusable if the sweep does not reach the current */
    public Span forward() {
        DarkCurve.forward(upright, at);
        return new Course(turned).voltsAt(-at);
    }

    /** The resistance of the slope at no voltage, in ohms. */
    public Span shunt() {
        return new Slopes(turned).ohmsAt(Span.exactly(0));
    }

    /** The resistance of the slope at the highest voltage, in ohms. */
    public Span series() {
        return new Slopes(turned).ohmsAt(Span.exactly(turned.volts(turned.size() - 1)));
    }

    /** @throws dev.sunthread.kernel.verdict.Unusable if the current falls while the voltage rises */
    public void checkPossible() {
        Possible.currentNeverRises(turned);
    }
}
