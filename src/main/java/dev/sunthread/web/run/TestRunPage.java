package dev.sunthread.web.run;

import dev.sunthread.inbox.OpenFinding;
import java.time.OffsetDateTime;
import java.util.List;

/**
 * Everything the page of a test run shows, at one cut-off.
 *
 * @param records what is recorded under its number; more than one is a finding
 */
public record TestRunPage(String number, List<OpenFinding> findings, List<Recorded> records) {

    /** A test of a unit as one entry tells it; the verdict as a word. */
    public record Recorded(
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
}
