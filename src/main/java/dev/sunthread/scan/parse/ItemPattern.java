package dev.sunthread.scan.parse;

import dev.sunthread.kernel.SerialPattern;

/** What the serials of an item look like. */
public record ItemPattern(String item, SerialPattern pattern) {}
