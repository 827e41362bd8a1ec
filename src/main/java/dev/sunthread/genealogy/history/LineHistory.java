package dev.sunthread.genealogy.history;

import dev.sunthread.genealogy.line.LineReading;
import dev.sunthread.genealogy.records.LineRecords;
import dev.sunthread.genealogy.records.OpenLine;
import dev.sunthread.inbox.KeptLine;
import dev.sunthread.inbox.LineText;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Known;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Reads the kept lines that are open at a cut-off, once; a name means everything that was called so by then. */
final class LineHistory implements LineRecords {

    private static final String OPEN = """
            SELECT l.entry, l.text FROM inbox.line l
            WHERE %s AND NOT EXISTS (SELECT FROM inbox.line_settlement s WHERE s.line = l.entry AND %s) ORDER BY l.entry
            """.formatted(Known.at("l.entry"), Known.at("s.entry"));

    private record Kept(long entry, String text) {}

    private final JdbcClient jdbc;
    private final long cutoff;
    private final Clocks clocks;
    private final Map<TraceRef, String> strangers = new HashMap<>();
    private @Nullable List<OpenLine> open;

    LineHistory(JdbcClient jdbc, long cutoff, Clocks clocks) {
        this.jdbc = jdbc;
        this.cutoff = cutoff;
        this.clocks = clocks;
    }

    @Override
    public List<OpenLine> open() {
        if (open == null) {
            open = read();
        }
        return open;
    }

    @Override
    public Map<TraceRef, String> strangers() {
        open();
        return strangers;
    }

    private List<OpenLine> read() {
        List<Kept> kept = jdbc.sql(OPEN)
                .param("cutoff", cutoff)
                .query((row, number) -> new Kept(row.getLong(1), row.getString(2)))
                .list();
        if (kept.isEmpty()) {
            return List.of();
        }
        Map<Long, List<KeptLine.Name>> names = names(kept);
        Map<Long, LineText> texts =
                kept.stream().collect(Collectors.toMap(Kept::entry, one -> LineText.of(one.text())));
        NamesInLines known = new NamesInLines(jdbc, cutoff, clocks);
        texts.forEach((entry, text) -> known.learn(LineReading.saidIn(text, names.getOrDefault(entry, List.of()))));
        LineReading reading = new LineReading(known);
        List<OpenLine> lines = kept.stream()
                .flatMap(one -> reading
                        .lines(
                                one.entry(),
                                Objects.requireNonNull(texts.get(one.entry())),
                                names.getOrDefault(one.entry(), List.of()))
                        .stream())
                .toList();
        reading.strangers().forEach((stranger, node) -> strangers.put(node, stranger.name()));
        return lines;
    }

    private Map<Long, List<KeptLine.Name>> names(List<Kept> kept) {
        return jdbc
                .sql(
                        "SELECT entry, kind, name FROM inbox.line_name WHERE entry = ANY (:entries) ORDER BY entry, ordinal")
                .param("entries", kept.stream().map(Kept::entry).toArray(Long[]::new))
                .query((row, number) -> Map.entry(
                        row.getLong(1),
                        new KeptLine.Name(
                                KeptLine.NameKind.valueOf(row.getString(2).toUpperCase(Locale.ROOT)),
                                row.getString(3))))
                .list()
                .stream()
                .collect(Collectors.groupingBy(
                        Map.Entry::getKey, Collectors.mapping(Map.Entry::getValue, Collectors.toList())));
    }
}
