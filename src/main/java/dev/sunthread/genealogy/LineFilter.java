package dev.sunthread.genealogy;

import org.jspecify.annotations.Nullable;

/**
 * Which lines of an answer to show and in which order.
 *
 * @param level only this level
 * @param when the time that {@code certainty} is about
 * @param certainty only this class then; with {@code when} and no class: any class then
 * @param place only units whose outermost unit was seen there last
 * @param held only lines with a hold, or only those without
 * @param outermost only units that are inside no other now, or only those that are
 * @param text only lines whose name, place or reason contains it
 * @param sort the column to sort by
 */
public record LineFilter(
        @Nullable String level,
        @Nullable When when,
        @Nullable Certainty certainty,
        @Nullable String place,
        @Nullable Boolean held,
        @Nullable Boolean outermost,
        @Nullable String text,
        Sort sort,
        boolean descending) {

    /** Everything, by level and name. */
    public static final LineFilter ALL = new LineFilter(null, null, null, null, null, null, null, Sort.LEVEL, false);

    /** The columns that lines can be sorted by. */
    public enum Sort {
        LEVEL,
        NAME,
        CERTAINTY,
        PLACE
    }
}
