package dev.sunthread.electrical.terms;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.electrical.curve.Curve.Point;
import dev.sunthread.electrical.curve.CurveMethod;
import dev.sunthread.electrical.translate.Conditions;
import dev.sunthread.electrical.translate.Procedure1;
import dev.sunthread.electrical.translate.Translation;
import dev.sunthread.kernel.verdict.Criterion;
import dev.sunthread.kernel.verdict.Limits;
import dev.sunthread.kernel.verdict.Span;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Whatever is computed of points that scatter, stand unevenly and were read by a wrong rig, the truth lies within it. */
class TruthInCurveSpansTests {

    private static final int CURVES = Integer.getInteger("sunthread.truths", 1_000);
    private static final long SEED = Long.getLong("sunthread.seed", 1);
    private static final Limits ANY = Limits.between(-1e300, 1e300);
    private static final List<CurveQuantity> QUANTITIES = List.of(
            CurveQuantity.SHORT_CIRCUIT_CURRENT,
            CurveQuantity.OPEN_CIRCUIT_VOLTAGE,
            CurveQuantity.MAXIMUM_POWER,
            CurveQuantity.FILL_FACTOR,
            CurveQuantity.SHUNT_SLOPE,
            CurveQuantity.SERIES_SLOPE);

    @ParameterizedTest
    @EnumSource
    void asMeasured(TrueCurve.Kind kind) {
        hold(kind, null, null);
    }

    @ParameterizedTest
    @EnumSource
    void translated(TrueCurve.Kind kind) {
        Conditions under = new Conditions(850, 45);
        hold(kind, new Procedure1(Conditions.STANDARD, 0.0045, -0.004, 0.01, 0.0001), under);
    }

    private static void hold(TrueCurve.Kind kind, @Nullable Translation translation, @Nullable Conditions under) {
        Random random = new Random(SEED);
        int judged = 0;
        int close = 0;
        for (int i = 0; i < CURVES; i++) {
            TrueCurve measured = TrueCurve.of(kind, random);
            TrueCurve truth = translation == null || under == null ? measured : moved(measured, translation, under);
            RigError error = random.nextInt(3) == 0
                    ? new RigError(new Span(0, random.nextDouble() * 0.03), new Span(-random.nextDouble() * 0.01, 0))
                    : RigError.NONE;
            Swept swept = swept(measured, kind, error, under, random);
            List<Criterion> criteria = new CurveTerms("light", CurveMethod.USUAL, translation, limits())
                    .judge(new Tested(List.of(swept), List.of(), error), new ArrayList<>());
            Map<CurveQuantity, Double> values = values(truth);
            for (int q = 0; q < QUANTITIES.size(); q++) {
                Span told = criteria.get(q).value();
                if (told != null) {
                    judged++;
                    CurveQuantity quantity = QUANTITIES.get(q);
                    contains(told, Objects.requireNonNull(values.get(quantity)), quantity + " of " + kind + " " + i);
                    close += q < 4 && told.high() - told.low() < 0.1 * told.high() ? 1 : 0;
                }
            }
        }
        assertThat(judged).isGreaterThan(CURVES * 3);
        assertThat(close).isGreaterThan(CURVES);
    }

    private static TrueCurve moved(TrueCurve measured, Translation translation, Conditions conditions) {
        Translation.Measured under = new Translation.Measured(
                conditions, measured.amperes(measured.atNoVoltage()), measured.volts(measured.atNoCurrent()));
        return measured.moved(point -> translation.translate(point, under));
    }

    private static List<CurveTerms.Limited> limits() {
        return QUANTITIES.stream()
                .map(quantity -> new CurveTerms.Limited(quantity, ANY))
                .toList();
    }

    private static Map<CurveQuantity, Double> values(TrueCurve truth) {
        Map<CurveQuantity, Double> values = new EnumMap<>(CurveQuantity.class);
        double current = truth.amperes(truth.atNoVoltage());
        double voltage = truth.volts(truth.atNoCurrent());
        values.put(CurveQuantity.SHORT_CIRCUIT_CURRENT, current);
        values.put(CurveQuantity.OPEN_CIRCUIT_VOLTAGE, voltage);
        values.put(CurveQuantity.MAXIMUM_POWER, truth.watts());
        values.put(CurveQuantity.FILL_FACTOR, truth.watts() / current / voltage);
        values.put(CurveQuantity.SHUNT_SLOPE, truth.ohms(truth.atNoVoltage()));
        values.put(CurveQuantity.SERIES_SLOPE, truth.ohms(truth.atNoCurrent()));
        return values;
    }

    /**
     * Points at even or uneven voltages, one way or both, with noise and the digits of a rig. A step that hides between few
     * points is seen by none, so a string with a bypassed cell is swept evenly by many.
     */
    static Swept swept(
            TrueCurve truth, TrueCurve.Kind kind, RigError error, @Nullable Conditions under, Random random) {
        boolean bypassed = kind == TrueCurve.Kind.BYPASSED;
        int points = (bypassed ? 100 : 12) + random.nextInt(random.nextBoolean() ? 30 : 300);
        boolean even = bypassed || random.nextBoolean();
        double from = truth.atNoVoltage() * (random.nextInt(3) == 0 ? 1.02 : random.nextDouble());
        double to = 1 - random.nextDouble() * (1 - truth.atNoCurrent());
        List<Double> taken = new ArrayList<>();
        for (int i = 0; i < points; i++) {
            taken.add(from + (to - from) * (even ? (double) i / (points - 1) : random.nextDouble()));
        }
        Collections.sort(taken);
        if (random.nextInt(3) == 0) {
            Collections.reverse(taken);
        } else if (random.nextInt(3) == 0) {
            List<Double> back = new ArrayList<>(taken);
            Collections.reverse(back);
            taken.addAll(back.stream().map(t -> t - 1e-4 * random.nextDouble()).toList());
        }
        double current = truth.amperes(truth.atNoVoltage());
        double noise = current * 0.003 * random.nextDouble() * random.nextInt(2);
        double gain = 1 + random.nextDouble() * error.current().high();
        double scale = 1 + random.nextDouble() * error.voltage().low();
        Point[] read = taken.stream()
                .map(t -> new Point(
                        rounded(truth.volts(t) * scale, 1e-4),
                        rounded((truth.amperes(t) + random.nextGaussian() * noise) * gain, 1e-4)))
                .toArray(Point[]::new);
        return new Swept(
                "light",
                under,
                Arrays.stream(read).mapToDouble(Point::volts).toArray(),
                Arrays.stream(read).mapToDouble(Point::amperes).toArray());
    }

    private static double rounded(double value, double digit) {
        return Math.rint(value / digit) * digit;
    }

    static void contains(Span told, double truth, String which) {
        double rounding = 1e-6 * Math.abs(truth);
        assertThat(told.low() <= truth + rounding && told.high() >= truth - rounding)
                .as("%s of seed %d: %s lies within %s", which, SEED, truth, told)
                .isTrue();
    }

    @Test
    void inTheDark() {
        Random random = new Random(SEED);
        for (int i = 0; i < CURVES; i++) {
            double slope = 0.027 + random.nextDouble() * 0.06;
            double top = 0.5 + random.nextDouble() * 8;
            double conductance = random.nextDouble() * 0.01;
            double resistance = random.nextDouble() * 0.1;
            double saturation = top / Math.expm1(0.9 / slope);
            DarkTerms terms = new DarkTerms(
                    "dark",
                    top * (0.05 + random.nextDouble() * 0.7),
                    5,
                    Arrays.stream(DarkQuantity.values())
                            .map(quantity -> new DarkTerms.Limited(quantity, ANY))
                            .toList());
            int points = 20 + random.nextInt(200);
            double noise = top * 0.002 * random.nextDouble() * random.nextInt(2);
            double[] junctions = IntStream.range(0, points)
                    .mapToDouble(k -> -0.1 + 1.0 * k / (points - 1))
                    .toArray();
            double[] volts = Arrays.stream(junctions)
                    .map(v -> v + resistance * dark(v, saturation, slope, conductance))
                    .toArray();
            double[] amperes = Arrays.stream(junctions)
                    .map(v -> dark(v, saturation, slope, conductance) + random.nextGaussian() * noise)
                    .toArray();
            List<Criterion> criteria = terms.judge(
                    new Tested(List.of(new Swept("dark", null, true, volts, amperes)), List.of(), RigError.NONE),
                    new ArrayList<>());
            double junction = TrueCurve.where(v -> terms.current() - dark(v, saturation, slope, conductance));
            double growth = saturation / slope * Math.exp(0.9 / slope) + conductance;
            double[] truths = {
                junction + resistance * terms.current(),
                1 / (saturation / slope + conductance) + resistance,
                1 / growth + resistance
            };
            for (int q = 0; q < truths.length; q++) {
                Span told = criteria.get(q).value();
                if (told != null) {
                    contains(told, truths[q], DarkQuantity.values()[q] + " " + i);
                }
            }
        }
    }

    private static double dark(double volts, double saturation, double slope, double conductance) {
        return saturation * Math.expm1(volts / slope) + volts * conductance;
    }
}
