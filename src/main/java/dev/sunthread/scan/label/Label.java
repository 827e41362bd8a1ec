package dev.sunthread.scan.label;

import java.util.List;

/**
 * A label to print.
 *
 * @param code what its code holds
 * @param heading what kind of thing it names, in small letters
 * @param name the name, as large as fits
 * @param lines what else stands on it
 */
public record Label(String code, String heading, String name, List<String> lines) {}
