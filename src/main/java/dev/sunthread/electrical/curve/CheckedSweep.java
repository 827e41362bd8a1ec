package dev.sunthread.electrical.curve;

import dev.sunthread.kernel.Refused;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Makes a curve of points as they came; what can't be right is refused, what is odd is told. */
final class CheckedSweep {

    private static final int FEWEST = 5;
    private static final double OUT_OF_SCALE = 50;

    private final List<String> remarks = new ArrayList<>();

    private CheckedSweep() {}

    static Curve of(double[] volts, double[] amperes) {
        if (volts.length != amperes.length || volts.length < FEWEST) {
            throw new Refused(
                    "A sweep of " + volts.length + " voltages and " + amperes.length + " currents is too short",
                    "Give at least " + FEWEST + " points, with one current to each voltage");
        }
        for (int i = 0; i < volts.length; i++) {
            pointIsANumber(i, volts[i], amperes[i]);
        }
        currentsAreInOneUnit(amperes);
        return new CheckedSweep().inOrder(volts, amperes);
    }

    private static void pointIsANumber(int i, double volts, double amperes) {
        if (!Double.isFinite(volts) || !Double.isFinite(amperes)) {
            throw new Refused(
                    "Point " + (i + 1) + " is not a number: " + volts + " V, " + amperes + " A",
                    "Leave out points that the rig did not measure");
        }
    }

    private static void currentsAreInOneUnit(double[] amperes) {
        double[] sizes = Arrays.stream(amperes).map(Math::abs).sorted().toArray();
        double usual = sizes[sizes.length / 2];
        double most = Arrays.stream(amperes).max().orElseThrow();
        if (usual > 0 && most > OUT_OF_SCALE * usual) {
            throw new Refused(
                    "A current of " + most + " A stands among currents of about " + usual
                            + " A: amperes and milliamperes are mixed up",
                    "State all currents in amperes");
        }
    }

    private Curve inOrder(double[] volts, double[] amperes) {
        int[] order = IntStream.range(0, volts.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> volts[i]))
                .mapToInt(i -> i)
                .toArray();
        tellOfDirection(volts);
        List<Curve.Point> points = new ArrayList<>();
        for (int i = 0; i < order.length; ) {
            int same = i;
            double sum = 0;
            while (same < order.length && volts[order[same]] == volts[order[i]]) {
                sum += amperes[order[same++]];
            }
            points.add(new Curve.Point(volts[order[i]], sum / (same - i)));
            i = same;
        }
        if (points.size() < order.length) {
            remarks.add((order.length - points.size()) + " points repeat a voltage; the mean of their currents counts");
        }
        return curve(points);
    }

    private void tellOfDirection(double[] volts) {
        long falling = IntStream.range(1, volts.length)
                .filter(i -> volts[i] < volts[i - 1])
                .count();
        if (falling == volts.length - 1) {
            remarks.add("Swept from open circuit to short circuit; the points are read in the other order");
        } else if (falling > 0) {
            remarks.add("The voltage goes back " + falling + " times within the sweep; the points are put in order");
        }
    }

    private Curve curve(List<Curve.Point> points) {
        if (points.size() < FEWEST) {
            throw new Refused(
                    "Only " + points.size() + " points of the sweep are at different voltages",
                    "Give at least " + FEWEST + " points at different voltages");
        }
        return new Curve(
                points.stream().mapToDouble(Curve.Point::volts).toArray(),
                points.stream().mapToDouble(Curve.Point::amperes).toArray(),
                remarks);
    }
}
