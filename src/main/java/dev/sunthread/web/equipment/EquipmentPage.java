package dev.sunthread.web.equipment;

import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.web.Paged;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Everything the page of equipment shows, at one cut-off.
 *
 * @param checks how it was checked, the newest first
 * @param judged what was judged by the errors that bad checks found
 * @param runs a page of what was done with it, the newest first
 */
public record EquipmentPage(
        String code, List<Revision> revisions, List<Check> checks, List<Since> judged, Paged<Run> runs) {

    /** A released revision, with the station it stands at. */
    public record Revision(
            String revision, String name, @Nullable String station, OffsetDateTime from) {}

    /**
     * A calibration or verification, in words, with the specification it was for.
     *
     * @param errors by how much it was found to read wrong
     * @param radiometer what a radiometer read at it
     * @param lost how many runs since the check before are accepted no more by it
     */
    public record Check(
            OffsetDateTime at,
            String way,
            String verdict,
            @Nullable String specification,
            String evidence,
            List<Phrase> errors,
            List<Phrase> radiometer,
            long lost,
            String entry) {}

    /** A cure run or test run, in words, with its recipe or specification, and the verdict that stands by its raw data. */
    public record Run(
            String what,
            String number,
            String under,
            OffsetDateTime from,
            OffsetDateTime until,
            @Nullable String verdict) {}
}
