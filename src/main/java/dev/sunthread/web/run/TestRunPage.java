package dev.sunthread.web.run;

import dev.sunthread.inbox.OpenFinding;
import java.time.OffsetDateTime;
import java.util.List;

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
    public record Judged(String entry, List<RunVerdict> verdicts, List<TestCurve> curves) {}
}
