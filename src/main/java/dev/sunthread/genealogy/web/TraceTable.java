package dev.sunthread.genealogy.web;

import static dev.sunthread.kernel.Table.column;

import dev.sunthread.genealogy.AnswerHead;
import dev.sunthread.genealogy.AnswerLine;
import dev.sunthread.genealogy.LineFilter;
import dev.sunthread.genealogy.Traces;
import dev.sunthread.kernel.Table;

/** The lines of an answer that a filter leaves, all of them, as a table. */
final class TraceTable {

    private TraceTable() {}

    static String name(AnswerHead head) {
        return "trace-" + head.hash().substring(0, 8);
    }

    static Table<AnswerLine> of(Traces traces, AnswerHead head, LineFilter filter) {
        return Table.of(
                name(head),
                each -> traces.each(head.id(), filter, each),
                column("kind", line -> line.kind().toLowerCase(java.util.Locale.ROOT)),
                column("level", AnswerLine::level),
                column("item", AnswerLine::item),
                column("name", AnswerLine::name),
                column("issuer", AnswerLine::issuer),
                column("ever", AnswerLine::ever),
                column("now", AnswerLine::now),
                column("at_shipment", AnswerLine::atShipment),
                column("at", AnswerLine::at),
                column("reason", AnswerLine::reason),
                column("place", AnswerLine::place),
                column("holds", AnswerLine::holds),
                column("shipments", AnswerLine::shipments),
                column("path", AnswerLine::path),
                column("within", AnswerLine::within),
                column("spot", AnswerLine::spot));
    }
}
