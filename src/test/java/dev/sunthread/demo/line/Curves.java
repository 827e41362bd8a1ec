package dev.sunthread.demo.line;

import dev.sunthread.demo.told.Bodies;
import dev.sunthread.demo.told.Notebook;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tools.jackson.databind.node.ObjectNode;

/**
 * Curves of current and voltage as a rig measures them: one diode with series and shunt resistance for the whole string,
 * given by the voltage over its junctions so that no equation has to be solved. A weak cell is passed by its bypass diode
 * at currents above its own.
 */
final class Curves {

    private static final int POINTS = 24;
    private static final int CELLS = 12;
    private static final double OPEN_VOLTAGE = 3.02;
    private static final double IDEALITY = 0.0925;
    private static final double SERIES = 0.19;
    private static final double SHUNT = 900;
    private static final double BYPASS = 0.48;

    private final Notebook notes;

    Curves(Notebook notes) {
        this.notes = notes;
    }

    /** A sweep of a string with a short-circuit current, in amperes, that is sound or has one weak cell. */
    ObjectNode sweep(double shortCircuit, boolean sound) {
        double suns = notes.between(975, 1012);
        double current = shortCircuit * suns / 1000 * (1 + notes.between(-12, 12) / 1000.0);
        double open = CELLS * (OPEN_VOLTAGE + notes.between(-20, 20) / 1000.0);
        double weak = sound ? Double.MAX_VALUE : current * notes.between(60, 78) / 100;
        List<String> volts = new ArrayList<>();
        List<String> amperes = new ArrayList<>();
        for (int point = 0; point < POINTS; point++) {
            double junction = -0.4 + (open + 0.8) * Math.sqrt(point / (POINTS - 1.0));
            double given = current
                    - current * Math.expm1(junction / (CELLS * IDEALITY)) / Math.expm1(open / (CELLS * IDEALITY))
                    - junction / SHUNT;
            double passed = given > weak ? OPEN_VOLTAGE + BYPASS : 0;
            volts.add(digits("%.3f", junction - given * SERIES - passed));
            amperes.add(digits("%.4f", given + notes.between(-8, 8) / 10_000.0));
        }
        return Bodies.of(
                "name",
                "light",
                "irradiance",
                digits("%.1f", suns),
                "cellTemperature",
                digits("%.1f", notes.between(238, 271) / 10.0),
                "volts",
                volts,
                "amperes",
                amperes);
    }

    private static String digits(String form, double number) {
        String written = String.format(Locale.ROOT, form, number);
        return written.matches("-0\\.0+") ? written.substring(1) : written;
    }
}
