package dev.sunthread.web;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;

/**
 * What was just done, to be said on the page that comes next.
 *
 * @param key of the message
 * @param about what the message names; absent if it names nothing
 */
public record Done(String key, @Nullable String about) implements Serializable {}
