package dev.sunthread.genealogy.web;

import dev.sunthread.genealogy.AnswerHead;
import dev.sunthread.genealogy.AnswerLine;
import dev.sunthread.genealogy.Count;
import dev.sunthread.genealogy.LinePage;
import dev.sunthread.quality.StationBehind;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * An answer as JSON: what it says of itself, and one page of its lines.
 *
 * @param cutoff the ledger position it counts records up to; asking with it again gives the same hash
 * @param notes where joining the parts of the scope did nothing
 * @param instead where its scope joins suspects by all or except: the address that joins their answers instead
 * @param total how many lines the filter leaves in all
 * @param page the page of lines, from 1
 * @param next the address of the next page of the same answer
 */
public record TraceAnswer(
        String id,
        TraceRequest question,
        List<String> suspects,
        @Nullable Long cutoff,
        @Nullable OffsetDateTime cutoffRecordedAt,
        String hash,
        List<Count> counts,
        long openFindings,
        long openLines,
        List<StationBehind> stationsBehind,
        List<String> notes,
        @Nullable String instead,
        List<AnswerLine> lines,
        long total,
        int page,
        int size,
        @Nullable String next) {

    static TraceAnswer of(AnswerHead head, TraceRequest question, LineChoice choice, LinePage lines) {
        TraceAddress address = TraceAddress.of(head, question);
        boolean isLast = (long) lines.page() * lines.size() + lines.lines().size() >= lines.total();
        return new TraceAnswer(
                head.id(),
                question,
                head.suspects(),
                head.question().cutoff(),
                head.cutoffRecordedAt(),
                head.hash(),
                head.counts(),
                head.openFindings(),
                head.openLines(),
                head.stationsBehind(),
                head.notes(),
                JoinedOffer.json(question, head.question().cutoff()),
                lines.lines(),
                lines.total(),
                lines.page() + 1,
                lines.size(),
                isLast ? null : address.json(choice.onPage(lines.page() + 2)));
    }
}
