package dev.sunthread.web.inbox;

import static dev.sunthread.kernel.Table.column;

import dev.sunthread.inbox.KeptLine;
import dev.sunthread.inbox.Lines;
import dev.sunthread.inbox.OpenLine;
import dev.sunthread.kernel.Table;
import dev.sunthread.web.Paged;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Lists of open lines: all of them, or those that touched an answer of a trace. */
@Repository
class LineLists {

    private static final int A_PAGE = 100;

    private final Lines lines;
    private final JdbcClient jdbc;

    LineLists(Lines lines, JdbcClient jdbc) {
        this.lines = lines;
        this.jdbc = jdbc;
    }

    Paged<OpenLine> open(@Nullable String answer, @Nullable Integer page, long cutoff) {
        return answer == null
                ? Paged.of(page, A_PAGE, lines.count(cutoff), (offset, most) -> lines.open(cutoff, offset, most))
                : Paged.of(page, A_PAGE, touching(answer, cutoff));
    }

    private List<OpenLine> touching(String answer, long cutoff) {
        List<Long> entries = jdbc.sql("SELECT line FROM genealogy.answer_open_line WHERE answer = ?")
                .param(answer)
                .query((row, number) -> row.getLong(1))
                .list();
        return lines.among(entries, cutoff);
    }

    Table<OpenLine> table(@Nullable String answer, long cutoff) {
        return Table.listed(
                "inbox",
                () -> answer == null ? lines.open(cutoff, 0, Integer.MAX_VALUE) : touching(answer, cutoff),
                column("column.file", OpenLine::file),
                column("column.line", OpenLine::lineNumber),
                column("column.kept", OpenLine::keptAt),
                column("column.kept-as", OpenLine::entry),
                column(
                        "column.fields",
                        line -> line.problems().stream()
                                .map(KeptLine.Problem::field)
                                .toList()),
                column(
                        "column.wrong",
                        line -> line.problems().stream()
                                .map(KeptLine.Problem::reason)
                                .toList()),
                column(
                        "column.what-to-do",
                        line -> line.problems().stream()
                                .map(KeptLine.Problem::remedy)
                                .toList()),
                column("column.text", OpenLine::text));
    }
}
