package dev.sunthread.web.run;

import dev.sunthread.inbox.OpenFinding;
import dev.sunthread.kernel.verdict.Phrase;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Everything the page of a cure run shows, at one cut-off.
 *
 * @param records what is recorded under its number; more than one is a finding
 * @param carriers the carriers that were in it
 * @param units the units that were in it, by themselves or on carriers
 * @param judged what the raw data of each record say
 */
public record CureRunPage(
        String number,
        List<OpenFinding> findings,
        List<Recorded> records,
        List<Carrier> carriers,
        List<Member> units,
        List<Judged> judged) {

    /** A run as one entry tells it. */
    public record Recorded(
            long number,
            String recipe,
            String equipment,
            OffsetDateTime from,
            OffsetDateTime until,
            String actor,
            String entry) {}

    /** What the raw data of one entry say. */
    public record Judged(String entry, List<RunVerdict> verdicts, CureProfile profile, List<Bond> bonds) {}

    /**
     * A bond that is judged apart from the run: cured more than once, or by the sensor nearest to it.
     *
     * @param runs all its cures by the recipe
     */
    public record Bond(
            String item,
            String serial,
            @Nullable String issuer,
            @Nullable String position,
            List<String> runs,
            String outcome,
            Phrase sentence) {}

    /** A carrier in the load, with its position in the equipment. */
    public record Carrier(String code, @Nullable String position) {}

    /**
     * A unit in the load.
     *
     * @param carrier the carrier it was on; absent if it was in the load by itself
     * @param position its position on the carrier, or in the equipment
     */
    public record Member(
            String level,
            String item,
            String serial,
            String issuer,
            @Nullable String carrier,
            @Nullable String position) {}
}
