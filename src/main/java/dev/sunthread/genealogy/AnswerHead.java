package dev.sunthread.genealogy;

import dev.sunthread.quality.StationBehind;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What an answer says of itself.
 *
 * @param id names the stored answer; the same question at the same cut-off has the same id
 * @param question what was asked, the cut-off filled in
 * @param suspects what the question's root stood for, such as the lots behind a supplier lot
 * @param cutoffRecordedAt when the last entry of the cut-off was recorded; absent while nothing is
 * @param hash SHA-256 over the question with its cut-off and the lines in a fixed order, in hexadecimal: equal if the same
 *     question is answered alike
 * @param counts of distinct things per level, class and time, never added up across levels
 * @param openFindings findings that touch what the answer names
 * @param openLines kept lines that name any of the suspects
 * @param stationsBehind stations that may not have sent all that was done there, as known at the cut-off; nobody can tell
 *     whether the answer lacks something of it
 * @param notes where joining the parts of the scope did nothing, each as a sentence
 */
public record AnswerHead(
        String id,
        TraceQuestion question,
        List<String> suspects,
        @Nullable OffsetDateTime cutoffRecordedAt,
        String hash,
        List<Count> counts,
        long openFindings,
        long openLines,
        List<StationBehind> stationsBehind,
        List<String> notes) {}
