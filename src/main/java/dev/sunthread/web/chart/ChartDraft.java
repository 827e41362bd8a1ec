package dev.sunthread.web.chart;

import dev.sunthread.kernel.verdict.Digit;
import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** Collects lines and bands, and places them. */
public final class ChartDraft {

    private static final int STYLES = 6;

    private record Drawn(Object name, double[] x, double[] y) {}

    private record Wanted(Phrase name, Span span) {}

    private final Phrase label;
    private final Phrase xTitle;
    private final Phrase yTitle;
    private final List<Drawn> lines = new ArrayList<>();
    private final List<Wanted> bands = new ArrayList<>();

    public ChartDraft(Phrase label, Phrase xTitle, Phrase yTitle) {
        this.label = label;
        this.xTitle = xTitle;
        this.yTitle = yTitle;
    }

    /** A line by its name: a phrase, or a mark that is the same in every language. */
    public ChartDraft line(Object name, double[] x, double[] y) {
        lines.add(new Drawn(name, x, y));
        return this;
    }

    /** A band of values that lines should lie in; one that is open on a side goes to the edge. */
    public ChartDraft band(Phrase name, Span span) {
        bands.add(new Wanted(name, span));
        return this;
    }

    public Chart placed() {
        Scale x = Scale.of(lines.stream().flatMapToDouble(line -> DoubleStream.of(line.x())), Chart.LEFT, Chart.WIDTH);
        DoubleStream wanted = bands.stream()
                .flatMapToDouble(
                        band -> DoubleStream.of(band.span().low(), band.span().high()))
                .filter(Double::isFinite);
        DoubleStream values = lines.stream().flatMapToDouble(line -> DoubleStream.of(line.y()));
        Scale y = Scale.of(DoubleStream.concat(values, wanted), Chart.TOP + Chart.HEIGHT, -Chart.HEIGHT);
        return new Chart(
                label,
                new Chart.Axis(xTitle, x.ticks()),
                new Chart.Axis(yTitle, y.ticks()),
                IntStream.range(0, lines.size())
                        .mapToObj(i -> line(lines.get(i), i % STYLES + 1, x, y))
                        .toList(),
                bands.stream().map(band -> band(band, y)).toList());
    }

    private static Chart.Line line(Drawn line, int style, Scale x, Scale y) {
        StringBuilder points = new StringBuilder();
        for (int i = 0; i < line.x().length; i++) {
            points.append(String.format(Locale.ROOT, "%.1f,%.1f ", x.at(line.x()[i]), y.at(line.y()[i])));
        }
        return new Chart.Line(line.name(), points.toString().trim(), style);
    }

    private static Chart.Band band(Wanted band, Scale y) {
        double top = y.at(Math.min(band.span().high(), y.high()));
        return new Chart.Band(band.name(), top, y.at(Math.max(band.span().low(), y.low())) - top);
    }

    /** From values to places along an axis. */
    private record Scale(double low, double high, double step, double from, double length) {

        static Scale of(DoubleStream values, double from, double length) {
            double[] all = values.toArray();
            double low = DoubleStream.of(all).min().orElse(0);
            double high = DoubleStream.of(all).max().orElse(1);
            double step = step(high > low ? high - low : Math.max(1, Math.abs(high)));
            return new Scale(
                    Math.floor(low / step) * step,
                    Math.max(Math.ceil(high / step), Math.floor(low / step) + 1) * step,
                    step,
                    from,
                    length);
        }

        private static double step(double range) {
            double rough = Math.pow(10, Math.floor(Math.log10(range / 5)));
            double times = range / 5 / rough;
            return rough * (times < 1.5 ? 1 : times < 3.5 ? 2 : times < 7.5 ? 5 : 10);
        }

        double at(double value) {
            return from + (value - low) / (high - low) * length;
        }

        List<Chart.Tick> ticks() {
            int count = (int) Math.round((high - low) / step);
            return IntStream.rangeClosed(0, count)
                    .mapToDouble(i -> low + i * step)
                    .mapToObj(value -> new Chart.Tick(
                            Math.round(at(value) * 10) / 10.0, Digit.plain(Math.round(value / step) * step)))
                    .toList();
        }
    }
}
