package dev.sunthread.electrical.translate;

/** An inner series resistance in ohms and its change in ohm/K. */
public record SeriesResistance(double ohms, double perKelvin) {}
