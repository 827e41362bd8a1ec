package dev.sunthread.genealogy.web;

import dev.sunthread.genealogy.AnswerLine;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Writes lines as CSV (RFC 4180). A cell that a spreadsheet would take for a formula gets an apostrophe in front; lists
 * are joined by " | ".
 */
final class TraceCsv {

    private static final List<String> HEADER = List.of(
            "kind",
            "level",
            "item",
            "name",
            "issuer",
            "ever",
            "now",
            "at_shipment",
            "at",
            "reason",
            "place",
            "holds",
            "shipments",
            "path");
    private static final String STARTS_A_FORMULA = "=+-@\t\r";

    private final Writer out;

    TraceCsv(Writer out) {
        this.out = out;
        row(HEADER);
    }

    void line(AnswerLine line) {
        List<@Nullable String> cells = new ArrayList<>();
        cells.addAll(List.of(line.kind().toLowerCase(Locale.ROOT), line.level(), line.item(), line.name()));
        cells.add(line.issuer());
        cells.add(word(line.ever()));
        cells.add(word(line.now()));
        cells.add(word(line.atShipment()));
        cells.add(word(line.at()));
        cells.addAll(
                List.of(line.reason(), line.place(), join(line.holds()), join(line.shipments()), join(line.path())));
        row(cells);
    }

    private void row(List<? extends @Nullable String> cells) {
        try {
            for (int i = 0; i < cells.size(); i++) {
                out.write((i == 0 ? "" : ",") + cell(cells.get(i)));
            }
            out.write("\r\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String cell(@Nullable String text) {
        if (text == null || text.isEmpty()) {
            return "";
        }
        String safe = STARTS_A_FORMULA.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
        boolean quoted = safe.chars().anyMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return quoted ? "\"" + safe.replace("\"", "\"\"") + "\"" : safe;
    }

    private static String join(List<String> texts) {
        return String.join(" | ", texts);
    }

    private static @Nullable String word(@Nullable Object value) {
        return value == null ? null : value.toString().toLowerCase(Locale.ROOT);
    }
}
