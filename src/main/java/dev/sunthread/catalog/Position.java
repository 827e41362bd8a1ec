package dev.sunthread.catalog;

/** A named place on a station where material is loaded. */
public record Position(long id, long station, String stationCode, String code) {}
