package dev.sunthread.catalog;

/** A place where steps happen. */
public record Station(long id, String code) {}
