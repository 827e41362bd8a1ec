package dev.sunthread.genealogy.web;

import dev.sunthread.genealogy.AnswerHead;
import dev.sunthread.genealogy.Flow;
import dev.sunthread.genealogy.LineFilter;
import dev.sunthread.genealogy.LinePage;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What the page of an answer shows, with the addresses of everything beside it.
 *
 * @param columns the sortable columns with the address that sorts by each
 * @param question its parameters with the cut-off
 * @param again the page of the same question with everything recorded then
 * @param first the number of the first line shown, from 1; nought if none is
 */
public record TracePage(
        AnswerHead head,
        LineChoice choice,
        LineFilter filter,
        CountTable counts,
        List<String> levels,
        LinePage lines,
        long first,
        long last,
        @Nullable String previous,
        @Nullable String next,
        Map<String, String> columns,
        String everything,
        String json,
        String flow,
        FlowPicture picture,
        String flowData,
        List<String> places,
        Map<String, String> question,
        String again) {

    static TracePage of(
            AnswerHead head, TraceRequest asked, LineChoice choice, LinePage lines, Flow flow, List<String> places) {
        TraceAddress address = TraceAddress.of(head, asked);
        CountTable counts = CountTable.of(head, address, choice);
        int shown = lines.lines().size();
        long before = (long) lines.page() * lines.size();
        return new TracePage(
                head,
                choice,
                choice.filter(),
                counts,
                counts.rows().stream().map(CountTable.Row::level).toList(),
                lines,
                shown == 0 ? 0 : before + 1,
                before + shown,
                lines.page() == 0 ? null : address.page(choice.onPage(lines.page())),
                before + shown >= lines.total() ? null : address.page(choice.onPage(lines.page() + 2)),
                columns(address, choice),
                address.page(LineChoice.ALL),
                address.json(choice),
                address.flow(),
                FlowPicture.of(head, flow, address),
                address.flowJson(),
                places,
                address.question(),
                address.again(choice.onPage(null)));
    }

    /** The name of the table of all its lines. */
    public String table() {
        return TraceTable.name(head);
    }

    private static Map<String, String> columns(TraceAddress address, LineChoice choice) {
        Map<String, String> columns = new LinkedHashMap<>();
        for (LineFilter.Sort column : LineFilter.Sort.values()) {
            columns.put(column.name(), address.page(choice.sortedBy(column)));
        }
        return columns;
    }
}
