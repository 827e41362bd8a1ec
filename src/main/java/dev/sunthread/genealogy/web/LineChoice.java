package dev.sunthread.genealogy.web;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.LineFilter;
import dev.sunthread.genealogy.When;
import io.swagger.v3.oas.annotations.Parameter;
import org.jspecify.annotations.Nullable;

/** Which lines of an answer are asked for, as parameters of an address; pages count from 1. */
public record LineChoice(
        @Parameter(description = "Only this level, such as receiver or panel") @Nullable
        String level,

        @Parameter(description = "The time that certainty is about; alone: only lines of any class then") @Nullable
        When when,

        @Parameter(description = "Only this class") @Nullable
        Certainty certainty,

        @Parameter(
                description = "Only units whose outermost unit was seen last at this place, as lines tell it in spot")
        @Nullable
        String place,

        @Parameter(description = "true: only lines with a hold; false: only those without") @Nullable
        Boolean held,

        @Parameter(description = "true: only units that are inside no other now; false: only those that are") @Nullable
        Boolean outermost,

        @Parameter(description = "Only lines whose name, place or reason contains it") @Nullable
        String text,

        @Parameter(description = "The column to sort by") LineFilter.@Nullable Sort sort,

        @Parameter(description = "Whether to sort downwards") @Nullable
        Boolean descending,

        @Parameter(description = "The page, from 1") @Nullable
        Integer page) {

    static final LineChoice ALL = new LineChoice(null, null, null, null, null, null, null, null, null, null);

    LineFilter filter() {
        return new LineFilter(
                level == null || level.isEmpty() ? null : level,
                when,
                certainty,
                place == null || place.isEmpty() ? null : place,
                held,
                outermost,
                text == null || text.isBlank() ? null : text.strip(),
                sort == null ? LineFilter.Sort.LEVEL : sort,
                Boolean.TRUE.equals(descending));
    }

    /** The page to read, from 0. */
    int index() {
        return page == null ? 0 : Math.max(0, page - 1);
    }

    LineChoice only(@Nullable String otherLevel, @Nullable When otherWhen, @Nullable Certainty otherCertainty) {
        return new LineChoice(otherLevel, otherWhen, otherCertainty, null, null, null, null, sort, descending, null);
    }

    /** The outermost units at a place, or anywhere if it is absent; with a level and class, only those of it. */
    LineChoice at(@Nullable String otherLevel, @Nullable Certainty otherCertainty, @Nullable String otherPlace) {
        return listed(otherLevel, otherCertainty, otherPlace, true);
    }

    /** Everything of a level and class, of any if it is absent. */
    LineChoice of(@Nullable String otherLevel, @Nullable Certainty otherCertainty) {
        return listed(otherLevel, otherCertainty, null, null);
    }

    private LineChoice listed(
            @Nullable String otherLevel,
            @Nullable Certainty otherCertainty,
            @Nullable String otherPlace,
            @Nullable Boolean onlyOutermost) {
        return new LineChoice(
                otherLevel, null, otherCertainty, otherPlace, null, onlyOutermost, null, sort, descending, null);
    }

    LineChoice onPage(@Nullable Integer other) {
        return new LineChoice(level, when, certainty, place, held, outermost, text, sort, descending, other);
    }

    /** Sorted by a column; downwards if it is sorted by it upwards already. */
    LineChoice sortedBy(LineFilter.Sort column) {
        boolean down = filter().sort() == column && !filter().descending();
        return new LineChoice(level, when, certainty, place, held, outermost, text, column, down, null);
    }
}
