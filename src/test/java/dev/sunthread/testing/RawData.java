package dev.sunthread.testing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/** Bodies with raw data, and revisions that state what they must be like. */
public final class RawData {

    private RawData() {}

    /** A revision of recipe {@code BAKE}: at least 20 min from 145 to 155 degC, coldest sensor, peak of at most 160. */
    public static Map<String, Object> bakeRevision(String revision, String minutes) {
        Map<String, Object> thermal = Map.of(
                "sensors",
                "coldest-and-hottest",
                "recording",
                Map.of("longestGap", "1200", "fastestChange", "10"),
                "soak",
                Map.of("window", Map.of("from", "145", "to", "155"), "minutes", Map.of("least", minutes)),
                "peak",
                Map.of("most", "160"));
        return Map.of("recipe", "BAKE", "revision", revision, "name", "Bake", "terms", Map.of("thermal", thermal));
    }

    /** A bake of half an hour that ends at a full hour, with a sensor that holds a temperature for 20 minutes of it. */
    public static Map<String, Object> bake(String hour, String run, String sensor, String celsius, String... units) {
        Map<String, Object> body = new TreeMap<>(Map.of("run", run, "recipe", "BAKE", "equipment", "OVEN"));
        body.put("startedAt", Plant.at(hour + ":00").minusMinutes(30).toString().replace("+01:00", ":00+01:00"));
        body.put("units", Arrays.stream(units).map(Workshop::unit).toList());
        body.put(
                "profile",
                List.of(Map.of(
                        "sensor",
                        sensor,
                        "quantity",
                        "temperature",
                        "unitOfMeasure",
                        "degC",
                        "seconds",
                        List.of("0", "300", "900", "1500", "1800"),
                        "readings",
                        List.of("25", celsius, celsius, celsius, "60"))));
        return body;
    }

    /** A revision of specification {@code PULL}: sweep "light" gives at least some watts. */
    public static Map<String, Object> powerRevision(String revision, String watts) {
        Map<String, Object> limit = Map.of("quantity", "maximum-power", "bounds", Map.of("least", watts));
        return Map.of(
                "specification",
                "PULL",
                "revision",
                revision,
                "name",
                "Power",
                "terms",
                Map.of("curves", List.of(Map.of("sweep", "light", "limits", List.of(limit)))));
    }

    /** A revision of specification {@code PULL}: sweep "dark" has at most some volts at 0.1 A. */
    public static Map<String, Object> darkRevision(String revision, String volts) {
        Map<String, Object> limit = Map.of("quantity", "forward-voltage", "bounds", Map.of("most", volts));
        return Map.of(
                "specification",
                "PULL",
                "revision",
                revision,
                "name",
                "Dark",
                "terms",
                Map.of("dark", List.of(Map.of("sweep", "dark", "current", "0.1", "limits", List.of(limit)))));
    }

    /** A sweep without light that has half a volt at 0.1 A. */
    public static Map<String, Object> darkSweep() {
        Points points = Points.of(-10, 60, volts -> 0.1 * Math.expm1(volts / 0.056) / Math.expm1(0.5 / 0.056));
        return Map.of("name", "dark", "irradiance", "0", "volts", points.volts(), "amperes", points.amperes());
    }

    /** A test on the rig told to have a verdict, with the points of a sweep scaled in current. */
    public static Map<String, Object> swept(String run, String unit, String verdict, Points points) {
        Map<String, Object> body = new TreeMap<>(Workshop.pulled(run, unit, verdict));
        body.put("sweeps", List.of(Map.of("name", "light", "volts", points.volts(), "amperes", points.amperes())));
        return body;
    }

    /** A check that found a rig to read so many percent too much current; absent if it was good. */
    public static Map<String, Object> check(String equipment, @Nullable Map<String, Object> error, boolean good) {
        Map<String, Object> body = new TreeMap<>(
                Map.of("equipment", equipment, "verdict", good ? "good" : "bad", "evidence", "as written"));
        if (error != null) {
            body.put("errors", List.of(error));
        }
        return body;
    }

    /** Points of a sweep as decimal strings. */
    public record Points(List<String> volts, List<String> amperes) {

        /** A curve of some amperes at short circuit that gives 0.6 W at its best for one ampere. */
        public static Points of(double amperes) {
            return of(-10, 80, volts -> amperes * (1 - Math.expm1(volts / 0.051) / Math.expm1(0.78 / 0.051)));
        }

        /** A point each hundredth of a volt. */
        private static Points of(int from, int to, DoubleUnaryOperator amperes) {
            List<String> v = new ArrayList<>();
            List<String> i = new ArrayList<>();
            for (int hundredth = from; hundredth <= to; hundredth++) {
                BigDecimal volts = BigDecimal.valueOf(hundredth, 2);
                v.add(volts.toPlainString());
                i.add(BigDecimal.valueOf(amperes.applyAsDouble(volts.doubleValue()))
                        .setScale(6, RoundingMode.HALF_UP)
                        .toPlainString());
            }
            return new Points(v, i);
        }
    }
}
