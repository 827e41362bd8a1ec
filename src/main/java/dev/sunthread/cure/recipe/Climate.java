package dev.sunthread.cure.recipe;

import dev.sunthread.cure.profile.Coverage;
import dev.sunthread.cure.profile.SensorReadings;
import dev.sunthread.kernel.verdict.Span;
import java.util.List;

/** How long several sensors were inside their bands at the same time. */
final class Climate {

    private Climate() {}

    /** A sensor with the band that its truth should lie in. */
    record Band(SensorReadings sensor, Span band) {

        Span surely() {
            double low = band.low() + sensor.error().high();
            double high = band.high() + sensor.error().low();
            return low <= high ? new Span(low, high) : new Span(Double.MAX_VALUE, Double.MAX_VALUE);
        }

        Span possibly() {
            return new Span(
                    band.low() + sensor.error().low(),
                    band.high() + sensor.error().high());
        }
    }

    /** In seconds: surely, with no gap counted, to possibly, with every gap of any of them counted. */
    static Span seconds(List<Band> bands, double run, double longestGap) {
        List<List<Span>> surely = bands.stream()
                .map(band -> inside(band.sensor(), band.surely(), run, longestGap))
                .toList();
        List<List<Span>> outside =
                bands.stream().map(band -> outside(band, run, longestGap)).toList();
        double out = union(outside);
        return Span.between(Math.min(intersection(surely), run - out), run - out);
    }

    private static List<Span> inside(SensorReadings sensor, Span band, double run, double longestGap) {
        return Coverage.of(sensor.readings(), run, longestGap).told().stream()
                .map(line -> line.within(band))
                .filter(span -> !span.isExact())
                .toList();
    }

    /** When a sensor was surely outside of its band. */
    private static List<Span> outside(Band band, double run, double longestGap) {
        Span possibly = band.possibly();
        double far = Double.MAX_VALUE;
        return Coverage.of(band.sensor().readings(), run, longestGap).told().stream()
                .flatMap(line -> java.util.stream.Stream.of(
                        line.within(new Span(-far, Math.nextDown(possibly.low()))),
                        line.within(new Span(Math.nextUp(possibly.high()), far))))
                .filter(span -> !span.isExact())
                .toList();
    }

    private static double union(List<List<Span>> lists) {
        double covered = 0;
        double until = Double.NEGATIVE_INFINITY;
        for (Span span : lists.stream()
                .flatMap(List::stream)
                .sorted(java.util.Comparator.comparingDouble(Span::low))
                .toList()) {
            covered += Math.max(0, span.high() - Math.max(span.low(), until));
            until = Math.max(until, span.high());
        }
        return covered;
    }

    /** Both lists in order of time, none of their spans overlapping another of its list. */
    private static double intersection(List<List<Span>> lists) {
        List<Span> shared = lists.get(0);
        for (List<Span> next : lists.subList(1, lists.size())) {
            shared = shared(shared, next);
        }
        return shared.stream().mapToDouble(span -> span.high() - span.low()).sum();
    }

    private static List<Span> shared(List<Span> one, List<Span> other) {
        List<Span> shared = new java.util.ArrayList<>();
        int i = 0;
        int j = 0;
        while (i < one.size() && j < other.size()) {
            double from = Math.max(one.get(i).low(), other.get(j).low());
            double to = Math.min(one.get(i).high(), other.get(j).high());
            if (from < to) {
                shared.add(new Span(from, to));
            }
            if (one.get(i).high() < other.get(j).high()) {
                i++;
            } else {
                j++;
            }
        }
        return shared;
    }
}
