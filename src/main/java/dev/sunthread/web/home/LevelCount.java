package dev.sunthread.web.home;

/** How many units of a level are in process. */
public record LevelCount(String level, long units) {}
