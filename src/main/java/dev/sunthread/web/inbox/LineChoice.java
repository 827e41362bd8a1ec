package dev.sunthread.web.inbox;

import org.jspecify.annotations.Nullable;

/**
 * Which open lines a list shows.
 *
 * @param answer only those that touched this answer of a trace
 * @param file only those of the file of this name
 * @param page from 1
 */
record LineChoice(
        @Nullable String answer,
        @Nullable String file,
        @Nullable Integer page) {}
