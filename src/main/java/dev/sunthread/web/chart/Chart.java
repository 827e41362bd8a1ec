package dev.sunthread.web.chart;

import dev.sunthread.kernel.verdict.Phrase;
import java.util.List;

/**
 * A chart with everything placed, in units of the drawing.
 *
 * @param label what it shows, for those who can't see it
 */
public record Chart(Phrase label, Axis x, Axis y, List<Line> lines, List<Band> bands) {

    /** Where the field of the chart lies. */
    public static final int LEFT = 64;

    public static final int TOP = 12;
    public static final int WIDTH = 560;
    public static final int HEIGHT = 260;

    /** An axis with its title and the places of its numbers. */
    public record Axis(Phrase title, List<Tick> ticks) {}

    /** A number on an axis. */
    public record Tick(double at, String number) {}

    /** A line with its name, a phrase or a mark; its style tells it from others without colour. */
    public record Line(Object name, String points, int style) {}

    /** A band across the chart that lines should lie in, with its name. */
    public record Band(Phrase name, double y, double height) {}

    /** The legend's own band is as wide as this, so that a template needs no arithmetic. */
    public boolean hasBands() {
        return !bands.isEmpty();
    }
}
