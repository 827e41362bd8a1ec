package dev.sunthread.simulator.world;

/** A position of a station. */
public record Place(String station, String position) {}
