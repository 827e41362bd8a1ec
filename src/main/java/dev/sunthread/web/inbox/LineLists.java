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

/** Lists of open lines: all of them, or those that touched an answer of a trace, or those of a file. */
@Repository
class LineLists {

    private static final int A_PAGE = 100;

    private final Lines lines;
    private final JdbcClient jdbc;

    LineLists(Lines lines, JdbcClient jdbc) {
        this.lines = lines;
        this.jdbc = jdbc;
    }

    Paged<OpenLine> open(LineChoice choice, long cutoff) {
        String answer = choice.answer();
        String file = choice.file();
        if (answer != null) {
            return Paged.of(choice.page(), A_PAGE, touching(answer, cutoff));
        }
        long count = file == null ? lines.count(cutoff) : lines.countOfFile(file, cutoff);
        return Paged.of(choice.page(), A_PAGE, count, (offset, most) -> chosen(file, cutoff, offset, most));
    }

    private List<OpenLine> chosen(@Nullable String file, long cutoff, long offset, int most) {
        return file == null ? lines.open(cutoff, offset, most) : lines.ofFile(file, cutoff, cutoff, offset, most);
    }

    private List<OpenLine> touching(String answer, long cutoff) {
        List<Long> entries = jdbc.sql("SELECT line FROM genealogy.answer_open_line WHERE answer = ?")
                .param(answer)
                .query((row, number) -> row.getLong(1))
                .list();
        return lines.among(entries, cutoff);
    }

    Table<OpenLine> table(LineChoice choice, long cutoff) {
        String answer = choice.answer();
        return Table.listed(
                "inbox",
                () -> answer == null ? chosen(choice.file(), cutoff, 0, Integer.MAX_VALUE) : touching(answer, cutoff),
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
