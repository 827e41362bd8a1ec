package dev.sunthread.cure.light;

/**
 * What a radiometer read where the bond is.
 *
 * @param hoursAway how long before or after the run, never negative
 * @param irradiance in mW/cm2
 */
public record RadiometerReading(double hoursAway, double irradiance) {}
