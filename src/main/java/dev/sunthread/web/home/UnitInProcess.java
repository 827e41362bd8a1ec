package dev.sunthread.web.home;

/** A unit that is neither scrapped nor shipped, itself or with what it is in. */
public record UnitInProcess(String level, String item, String serial, String issuer) {}
