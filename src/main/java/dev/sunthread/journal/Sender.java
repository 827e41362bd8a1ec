package dev.sunthread.journal;

/**
 * Who hands lines in.
 *
 * @param actor the mark of the person or machine
 * @param file the file or address the lines come from
 */
public record Sender(String actor, String file) {}
