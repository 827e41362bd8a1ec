package dev.sunthread.simulator.told;

import java.util.EnumMap;
import java.util.Map;
import java.util.stream.Collectors;

/** How often each fault befalls a record that it can befall, from 0 to 1; 0 if nothing is said. */
public record Rates(Map<Fault, Double> rates) {

    public static final Rates NONE = new Rates(Map.of());

    public Rates with(Fault fault, double rate) {
        Map<Fault, Double> more = new EnumMap<>(Fault.class);
        more.putAll(rates);
        more.put(fault, rate);
        return new Rates(more);
    }

    public double of(Fault fault) {
        return rates.getOrDefault(fault, 0.0);
    }

    @Override
    public String toString() {
        return rates.isEmpty()
                ? "none"
                : new EnumMap<>(rates)
                        .entrySet().stream()
                                .map(one -> words(one.getKey()) + " " + one.getValue())
                                .collect(Collectors.joining(", "));
    }

    /** A fault in the words of tables. */
    public static String words(Fault fault) {
        return fault.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
    }
}
