package dev.sunthread.demo.line;

import dev.sunthread.demo.told.Bodies;
import dev.sunthread.demo.told.Notebook;
import dev.sunthread.demo.told.PlantTime;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import tools.jackson.databind.node.ObjectNode;

/** What the sensors of ovens, lamp and dwell rooms tell of a run. */
final class Profiles {

    private static final double ROOM = 24;
    private static final double SOAK = 150;
    private static final int HEATING = 25;
    private static final int COOLING = 88;
    private static final double MOST_DRIFT = 9;

    private final Notebook notes;

    Profiles(Notebook notes) {
        this.notes = notes;
    }

    List<ObjectNode> of(Runs.Run run) {
        return switch (run.recipe()) {
            case "TIM-150" -> oven(run);
            case "UV-365" ->
                List.of(series("RAD-1", "irradiance", "W/m2", seconds(run, 20), second -> 2_450 - second / 3));
            default ->
                List.of(
                        series("CL-1", "temperature", "degC", seconds(run, 3_600), second -> 22.8),
                        series("CL-2", "humidity", "%RH", seconds(run, 3_600), second -> 51));
        };
    }

    /** The controller holds its third thermocouple; when that one reads high, the load is colder by as much. */
    private List<ObjectNode> oven(Runs.Run run) {
        double drift = drift(run);
        List<ObjectNode> profile = new ArrayList<>();
        for (int sensor = 1; sensor <= 3; sensor++) {
            double offset = (sensor - 2) * 0.6 - (sensor == 3 ? 0 : drift);
            profile.add(
                    series("TC-" + sensor, "temperature", "degC", seconds(run, 60), second -> oven(second, offset)));
        }
        return profile;
    }

    private static double oven(double second, double offset) {
        double minute = second / 60;
        double heated = ROOM + (SOAK + offset - ROOM) * Math.min(1, minute / HEATING);
        return minute <= COOLING ? heated : ROOM + (heated - ROOM) * Math.exp(-(minute - COOLING) / 11);
    }

    private static double drift(Runs.Run run) {
        OffsetDateTime good = PlantTime.at(20, "05:06");
        OffsetDateTime bad = PlantTime.at(25, "05:06");
        boolean drifts = run.equipment().equals("OVEN-2")
                && run.start().isAfter(good)
                && run.start().isBefore(bad);
        double whole = Duration.between(good, bad).toMinutes();
        return drifts ? MOST_DRIFT * Duration.between(good, run.start()).toMinutes() / whole : 0;
    }

    private static List<Integer> seconds(Runs.Run run, int step) {
        List<Integer> seconds = new ArrayList<>();
        for (int second = 0; second <= Duration.between(run.start(), run.end()).toSeconds(); second += step) {
            seconds.add(second);
        }
        return seconds;
    }

    private ObjectNode series(
            String sensor, String quantity, String unitOfMeasure, List<Integer> seconds, DoubleUnaryOperator truly) {
        return Bodies.of(
                "sensor",
                sensor,
                "quantity",
                quantity,
                "unitOfMeasure",
                unitOfMeasure,
                "seconds",
                seconds,
                "readings",
                seconds.stream()
                        .map(second -> String.format(
                                Locale.ROOT, "%.1f", truly.applyAsDouble(second) + notes.between(-3, 3) / 10.0))
                        .toList());
    }
}
