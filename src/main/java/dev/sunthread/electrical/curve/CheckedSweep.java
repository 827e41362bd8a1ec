package dev.sunthread.electrical.curve;

import dev.sunthread.kernel.verdict.Digit;
import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Unusable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Makes a curve of points as they came; what can't be right is refused, what is odd is told. */
final class CheckedSweep {

    private static final int FEWEST = 5;
    private static final double OUT_OF_SCALE = 50;

    private final List<Phrase> remarks = new ArrayList<>();

    private CheckedSweep() {}

    /** Under light currents are of one size until they fall. */
    static Curve of(double[] volts, double[] amperes) {
        pointsAreNumbers(volts, amperes);
        currentsAreInOneUnit(amperes);
        return new CheckedSweep().inOrder(volts, amperes);
    }

    /** Without light currents grow over many sizes, but no single one stands out from those beside it. */
    static Curve dark(double[] volts, double[] amperes) {
        pointsAreNumbers(volts, amperes);
        noCurrentStandsOut(amperes);
        int highest = IntStream.range(0, volts.length)
                .reduce((i, k) -> volts[i] >= volts[k] ? i : k)
                .orElseThrow();
        CheckedSweep checked = new CheckedSweep();
        if (amperes[highest] >= 0) {
            return checked.inOrder(volts, amperes);
        }
        checked.remarks.add(Phrase.of("judged.dark.turned-over"));
        return checked.inOrder(volts, Arrays.stream(amperes).map(i -> -i).toArray());
    }

    private static void pointsAreNumbers(double[] volts, double[] amperes) {
        if (volts.length != amperes.length || volts.length < FEWEST) {
            throw new Unusable(
                    Phrase.of("judged.sweep.too-short", count(volts.length), count(amperes.length)),
                    Phrase.of("judged.sweep.too-short.remedy", count(FEWEST)));
        }
        for (int i = 0; i < volts.length; i++) {
            pointIsANumber(i, volts[i], amperes[i]);
        }
    }

    private static void noCurrentStandsOut(double[] amperes) {
        double noise = Arrays.stream(amperes).map(Math::abs).max().orElseThrow() / OUT_OF_SCALE / OUT_OF_SCALE;
        for (int i = 1; i < amperes.length - 1; i++) {
            double beside = Math.max(Math.abs(amperes[i - 1]), Math.abs(amperes[i + 1]));
            if (Math.abs(amperes[i]) > OUT_OF_SCALE * Math.max(beside, noise)) {
                throw mixedUp(amperes[i], beside);
            }
        }
    }

    private static Unusable mixedUp(double one, double others) {
        return new Unusable(
                Phrase.of("judged.sweep.mixed-units", Digit.plain(one), Digit.plain(others)),
                Phrase.of("judged.sweep.mixed-units.remedy"));
    }

    private static String count(int number) {
        return String.valueOf(number);
    }

    private static void pointIsANumber(int i, double volts, double amperes) {
        if (!Double.isFinite(volts) || !Double.isFinite(amperes)) {
            throw new Unusable(
                    Phrase.of("judged.sweep.no-number", count(i + 1), String.valueOf(volts), String.valueOf(amperes)),
                    Phrase.of("judged.sweep.no-number.remedy"));
        }
    }

    private static void currentsAreInOneUnit(double[] amperes) {
        double[] sizes = Arrays.stream(amperes).map(Math::abs).sorted().toArray();
        double usual = sizes[sizes.length / 2];
        double most = Arrays.stream(amperes).max().orElseThrow();
        if (usual > 0 && most > OUT_OF_SCALE * usual) {
            throw mixedUp(most, usual);
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
            remarks.add(Phrase.of("judged.sweep.repeats", count(order.length - points.size())));
        }
        return curve(points, Scatter.digit(volts), Scatter.digit(amperes));
    }

    private void tellOfDirection(double[] volts) {
        long falling = IntStream.range(1, volts.length)
                .filter(i -> volts[i] < volts[i - 1])
                .count();
        if (falling == volts.length - 1) {
            remarks.add(Phrase.of("judged.sweep.reversed"));
        } else if (falling > 0) {
            remarks.add(Phrase.of("judged.sweep.goes-back", String.valueOf(falling)));
        }
    }

    private Curve curve(List<Curve.Point> points, double voltageDigit, double currentDigit) {
        if (points.size() < FEWEST) {
            throw new Unusable(
                    Phrase.of("judged.sweep.same-voltages", count(points.size())),
                    Phrase.of("judged.sweep.same-voltages.remedy", count(FEWEST)));
        }
        double[] volts = points.stream().mapToDouble(Curve.Point::volts).toArray();
        double[] amperes = points.stream().mapToDouble(Curve.Point::amperes).toArray();
        double[] rounded = Scatter.rounded(volts, amperes, voltageDigit, currentDigit);
        return new Curve(volts, amperes, Scatter.of(volts, amperes, rounded), rounded, remarks);
    }
}
