package dev.sunthread.cure;

/** What a sensor measures during a cure. */
enum Quantity {
    TEMPERATURE,
    IRRADIANCE,
    HUMIDITY
}
