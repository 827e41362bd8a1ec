package dev.sunthread.inbox;

import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Keeps a line that could not be read or identified, so that the trace can count with it. */
@Component
class KeptLineKind implements Kind<KeptLine> {

    private final JdbcClient jdbc;

    KeptLineKind(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "kept-line";
    }

    @Override
    public Class<KeptLine> body() {
        return KeptLine.class;
    }

    @Override
    public String meaning() {
        return "A line came that could not be read or identified; it is kept in the inbox until a person settles it.";
    }

    @Override
    public boolean withdrawable() {
        return false;
    }

    @Override
    public void record(Fact<KeptLine> fact) {
        KeptLine line = fact.body();
        jdbc.sql(
                        "INSERT INTO inbox.line (entry, file, line_number, line_length, sha256, text) VALUES (?, ?, ?, ?, ?, ?)")
                .params(fact.entry(), line.file(), line.lineNumber(), line.length(), line.sha256())
                .param(storable(line.text()))
                .update();
        recordProblems(fact.entry(), line.problems());
        recordNames(fact.entry(), line.names());
    }

    private void recordProblems(long entry, List<KeptLine.Problem> problems) {
        for (int i = 0; i < problems.size(); i++) {
            KeptLine.Problem problem = problems.get(i);
            jdbc.sql("INSERT INTO inbox.line_problem (entry, ordinal, field, reason, remedy) VALUES (?, ?, ?, ?, ?)")
                    .params(entry, i + 1, storable(problem.field()), storable(problem.reason()))
                    .param(storable(problem.remedy()))
                    .update();
        }
    }

    private void recordNames(long entry, List<KeptLine.Name> names) {
        for (int i = 0; i < names.size(); i++) {
            jdbc.sql("INSERT INTO inbox.line_name (entry, ordinal, kind, name) VALUES (?, ?, ?, ?)")
                    .params(entry, i + 1, names.get(i).kind().name().toLowerCase(java.util.Locale.ROOT))
                    .param(names.get(i).name())
                    .update();
        }
    }

    /** The database keeps no NUL character; the ledger's own text does. */
    private static String storable(String text) {
        return text.replace('\0', '\uFFFD');
    }
}
