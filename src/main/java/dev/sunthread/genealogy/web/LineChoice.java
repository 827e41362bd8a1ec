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

        @Parameter(description = "Only lines whose name, place or reason contains it") @Nullable
        String text,

        @Parameter(description = "The column to sort by") LineFilter.@Nullable Sort sort,

        @Parameter(description = "Whether to sort downwards") @Nullable
        Boolean descending,

        @Parameter(description = "The page, from 1") @Nullable
        Integer page) {

    static final LineChoice ALL = new LineChoice(null, null, null, null, null, null, null);

    LineFilter filter() {
        return new LineFilter(
                level == null || level.isEmpty() ? null : level,
                when,
                certainty,
                text == null || text.isBlank() ? null : text.strip(),
                sort == null ? LineFilter.Sort.LEVEL : sort,
                Boolean.TRUE.equals(descending));
    }

    /** The page to read, from 0. */
    int index() {
        return page == null ? 0 : Math.max(0, page - 1);
    }

    LineChoice only(@Nullable String otherLevel, @Nullable When otherWhen, @Nullable Certainty otherCertainty) {
        return new LineChoice(otherLevel, otherWhen, otherCertainty, null, sort, descending, null);
    }

    LineChoice onPage(int other) {
        return new LineChoice(level, when, certainty, text, sort, descending, other);
    }

    /** Sorted by a column; downwards if it is sorted by it upwards already. */
    LineChoice sortedBy(LineFilter.Sort column) {
        boolean down = filter().sort() == column && !filter().descending();
        return new LineChoice(level, when, certainty, text, column, down, null);
    }
}
