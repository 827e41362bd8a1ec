package dev.sunthread.kernel;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Units of measure of mass, volume, length and area that can be told in one another, exactly, by the prefixes of the
 * International System of Units (SI Brochure, 9th edition, table 7). Any other unit equals itself only.
 */
public final class Measures {

    /** What is measured, and how much one unit of it is. */
    private record Unit(String dimension, BigDecimal size) {}

    private static final Map<String, Unit> UNITS = units();

    private Measures() {}

    private static Map<String, Unit> units() {
        Map<String, Unit> units = new HashMap<>();
        prefixed(units, "mass", "g");
        units.put("t", new Unit("mass", BigDecimal.ONE.scaleByPowerOfTen(6)));
        prefixed(units, "volume", "l");
        prefixed(units, "volume", "L");
        prefixed(units, "length", "m");
        units.put("m2", new Unit("area", BigDecimal.ONE));
        units.put("cm2", new Unit("area", BigDecimal.ONE.scaleByPowerOfTen(-4)));
        units.put("mm2", new Unit("area", BigDecimal.ONE.scaleByPowerOfTen(-6)));
        units.put("m3", new Unit("volume", BigDecimal.ONE.scaleByPowerOfTen(3)));
        units.put("cm3", new Unit("volume", BigDecimal.ONE.scaleByPowerOfTen(-3)));
        units.put("mm3", new Unit("volume", BigDecimal.ONE.scaleByPowerOfTen(-6)));
        return Map.copyOf(units);
    }

    private static void prefixed(Map<String, Unit> units, String dimension, String unit) {
        Map.of("k", 3, "", 0, "d", -1, "c", -2, "m", -3, "u", -6, "\u00b5", -6, "\u03bc", -6, "n", -9)
                .forEach((prefix, power) ->
                        units.put(prefix + unit, new Unit(dimension, BigDecimal.ONE.scaleByPowerOfTen(power))));
    }

    /** Whether a quantity in one unit can be told in the other. */
    public static boolean areOfOneDimension(String one, String other) {
        Unit first = UNITS.get(one);
        Unit second = UNITS.get(other);
        return one.equals(other)
                || first != null && second != null && first.dimension().equals(second.dimension());
    }

    /** A quantity in another unit of its dimension; nothing if it is none. */
    public static Optional<BigDecimal> told(BigDecimal quantity, String unit, String in) {
        if (unit.equals(in)) {
            return Optional.of(quantity);
        }
        Unit from = UNITS.get(unit);
        Unit to = UNITS.get(in);
        return from == null || to == null || !from.dimension().equals(to.dimension())
                ? Optional.empty()
                // powers of ten only, so that no digit is lost
                : Optional.of(quantity.multiply(from.size().divide(to.size())));
    }
}
