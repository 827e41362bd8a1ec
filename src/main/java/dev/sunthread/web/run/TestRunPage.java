package dev.sunthread.web.run;

import dev.sunthread.inbox.OpenFinding;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Everything the page of a test run shows, at one cut-off.
 *
 * @param records what is recorded under its number; more than one is a finding
 * @param judged what the raw data of each record say
 */
public record TestRunPage(String number, List<OpenFinding> findings, List<Recorded> records, List<Judged> judged) {

    /** A test of a unit as one entry tells it; the verdict as a word. */
    public record Recorded(
            long number,
            String level,
            String item,
            String serial,
            String issuer,
            String specification,
            String equipment,
            OffsetDateTime from,
            OffsetDateTime until,
            String verdict,
            String actor,
            String entry) {}

    /** What the raw data of one entry say. */
    public record Judged(String entry, List<RunVerdict> verdicts, List<TestCurve> curves, List<Result> chain) {}

    /**
     * One of all the results of a unit under one specification.
     *
     * @param told the verdict that was told, as a word
     * @param outcome what its raw data say; absent if no revision in force states what could be judged
     * @param repeated whether it shows, with the one next to it, a failure and then a pass with nothing done between
     */
    public record Result(
            String run,
            OffsetDateTime at,
            String equipment,
            String told,
            @Nullable String outcome,
            boolean repeated) {}
}
