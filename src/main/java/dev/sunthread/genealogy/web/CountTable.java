package dev.sunthread.genealogy.web;

import dev.sunthread.genealogy.AnswerHead;
import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.Count;
import dev.sunthread.genealogy.When;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The counts of an answer as a table: a row for each level, a column for each time and class; nothing is added up. */
public record CountTable(List<When> times, List<Row> rows) {

    /** One level. */
    public record Row(String level, String address, List<Cell> cells) {}

    /** How many of a level have a class at a time, and where they are listed. */
    public record Cell(When when, Certainty certainty, long count, String address, boolean chosen) {}

    static CountTable of(AnswerHead head, TraceAddress address, LineChoice choice) {
        List<When> times = Arrays.stream(When.values())
                .filter(when -> when != When.AT || head.question().at() != null)
                .toList();
        List<Row> rows = head.counts().stream()
                .map(Count::level)
                .distinct()
                .map(level -> row(level, times, head.counts(), address, choice))
                .toList();
        return new CountTable(times, rows);
    }

    private static Row row(
            String level, List<When> times, List<Count> counts, TraceAddress address, LineChoice choice) {
        List<Cell> cells = new ArrayList<>();
        for (When when : times) {
            Count count = counts.stream()
                    .filter(c -> c.level().equals(level) && c.when() == when)
                    .findFirst()
                    .orElse(new Count(when, level, 0, 0, 0));
            for (Certainty certainty : Certainty.values()) {
                LineChoice only = choice.only(level, when, certainty);
                boolean chosen =
                        level.equals(choice.level()) && when == choice.when() && certainty == choice.certainty();
                cells.add(new Cell(when, certainty, of(count, certainty), address.page(only), chosen));
            }
        }
        return new Row(level, address.page(choice.only(level, null, null)), cells);
    }

    private static long of(Count count, Certainty certainty) {
        return switch (certainty) {
            case CERTAIN -> count.certain();
            case POSSIBLE -> count.possible();
            case UNPROVEN -> count.unproven();
        };
    }
}
