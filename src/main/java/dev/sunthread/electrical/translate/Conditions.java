package dev.sunthread.electrical.translate;

/**
 * Under what a curve was measured, or is wanted.
 *
 * @param irradiance in W/m2
 * @param celsius the temperature of the cells
 */
public record Conditions(double irradiance, double celsius) {

    /** 1000 W/m2 and 25 degrees Celsius. */
    public static final Conditions STANDARD = new Conditions(1000, 25);

    /** @throws IllegalArgumentException without light, under which nothing can be translated */
    public Conditions {
        if (!(irradiance > 0) || !Double.isFinite(celsius)) {
            throw new IllegalArgumentException(
                    "nothing is translated at " + irradiance + " W/m2, " + celsius + " degC");
        }
    }
}
