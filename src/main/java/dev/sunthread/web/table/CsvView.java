package dev.sunthread.web.table;

import dev.sunthread.kernel.Table;
import jakarta.servlet.http.HttpServletResponse;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;

/** Writes a table as CSV (RFC 4180). */
@Component("csv")
class CsvView extends TableView {

    private final Cells cells;

    CsvView(Cells cells, MessageSource messages) {
        super(messages, "csv", "text/csv;charset=UTF-8");
        this.cells = cells;
    }

    @Override
    void write(Table<?> table, HttpServletResponse response) throws IOException {
        Writer out = new BufferedWriter(new OutputStreamWriter(response.getOutputStream(), StandardCharsets.UTF_8));
        write(out, table.headings());
        table.rows(row -> write(out, row));
        out.flush();
    }

    private void write(Writer out, List<? extends @Nullable Object> row) {
        try {
            out.write(row.stream().map(this::cell).collect(Collectors.joining(",", "", "\r\n")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String cell(@Nullable Object value) {
        String text = cells.text(value);
        boolean quoted = text.chars().anyMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r');
        return quoted ? "\"" + text.replace("\"", "\"\"") + "\"" : text;
    }
}
