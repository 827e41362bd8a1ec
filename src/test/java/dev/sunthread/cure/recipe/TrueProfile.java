package dev.sunthread.cure.recipe;

import dev.sunthread.cure.profile.Readings;
import dev.sunthread.cure.profile.SensorReadings;
import dev.sunthread.kernel.verdict.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A course that is known at every instant, and what a sensor told of it: readings near enough to each other have the truth
 * on the line between them, in gaps it goes its own way, and the sensor's error drifts within its span.
 *
 * @param truth all knots of the true course, around the whole run
 * @param told what the sensor read
 */
record TrueProfile(Readings truth, SensorReadings told) {

    /** A course of a run; readings may begin before it and go on behind it. */
    static TrueProfile of(Random random, double run, double longestGap, double least, double most) {
        List<double[]> knots = new ArrayList<>();
        List<double[]> read = new ArrayList<>();
        double low = random.nextInt(3) == 0 ? -random.nextDouble() * 3 : 0;
        Span error = random.nextBoolean() ? Span.exactly(low) : new Span(low, low + random.nextDouble() * 9);
        double second = (random.nextDouble() - 0.5) * longestGap * 3;
        double value = least + random.nextDouble() * (most - least);
        double end = run + (random.nextDouble() - 0.5) * longestGap * 3;
        before(knots, random, second, value, longestGap, least, most);
        while (second <= end || read.isEmpty()) {
            knots.add(new double[] {second, value});
            read.add(new double[] {second, value + error.low() + random.nextDouble() * (error.high() - error.low())});
            boolean gap = random.nextInt(12) == 0;
            double step = longestGap * (gap ? 1.01 + random.nextDouble() * 3 : 0.02 + random.nextDouble() * 0.97);
            if (gap && second + step <= end) {
                wander(knots, random, second, step, least, most);
            }
            second += step;
            value = Math.max(least, Math.min(most, value + random.nextGaussian() * (most - least) / 8));
        }
        behind(knots, random, run, longestGap, least, most);
        return new TrueProfile(
                readings(knots), SensorReadings.of("S", readings(read)).withError(error));
    }

    private static void before(
            List<double[]> knots, Random random, double second, double value, double gap, double least, double most) {
        if (second > gap) {
            knots.add(new double[] {0, least + random.nextDouble() * (most - least)});
            wander(knots, random, 0, second, least, most);
        } else if (second > 0) {
            knots.add(new double[] {0, value});
        }
    }

    private static void behind(List<double[]> knots, Random random, double run, double gap, double least, double most) {
        while (knots.get(knots.size() - 1)[0] > run && knots.size() > 1 && knots.get(knots.size() - 2)[0] > run) {
            knots.remove(knots.size() - 1);
        }
        double[] last = knots.get(knots.size() - 1);
        if (run - last[0] > gap) {
            wander(knots, random, last[0], run - last[0], least, most);
            knots.add(new double[] {run, least + random.nextDouble() * (most - least)});
        } else if (run > last[0]) {
            knots.add(new double[] {run, last[1]});
        }
    }

    private static void wander(
            List<double[]> knots, Random random, double from, double step, double least, double most) {
        for (int i = 1; i < 4; i++) {
            knots.add(new double[] {from + step * i / 4, least + random.nextDouble() * (most - least)});
        }
    }

    private static Readings readings(List<double[]> points) {
        return Readings.of(
                points.stream().mapToDouble(point -> point[0]).toArray(),
                points.stream().mapToDouble(point -> point[1]).toArray());
    }

    /** The truth itself, as a sensor without gaps or errors would tell it. */
    SensorReadings known() {
        return SensorReadings.of("truth", truth);
    }
}
