package dev.sunthread.web.equipment;

import dev.sunthread.catalog.Recipes;
import dev.sunthread.catalog.Specifications;
import dev.sunthread.catalog.TermsHistory;
import dev.sunthread.catalog.judging.Question;
import dev.sunthread.catalog.judging.Verdicts;
import dev.sunthread.cure.judging.CureVerdicts;
import dev.sunthread.electrical.judging.TestVerdicts;
import dev.sunthread.kernel.verdict.Outcome;
import dev.sunthread.ledger.Known;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Judges what was done with equipment since its last good check, wherever it was found bad. */
@Component
class JudgedSince {

    private static final String BAD = """
            SELECT c.checked_at AS at, (
              SELECT max(g.checked_at) FROM catalog.equipment_check g
              WHERE g.equipment = c.equipment AND g.verdict = 'GOOD' AND g.checked_at < c.checked_at AND %s) AS "from"
            FROM catalog.equipment_check c WHERE c.equipment = :equipment AND c.verdict = 'BAD' AND %s
            ORDER BY c.checked_at DESC LIMIT 5
            """.formatted(Known.at("g.entry"), Known.at("c.entry"));

    private static final String CODES = """
            SELECT DISTINCT p.code FROM %1$s.run_record r JOIN catalog.%2$s p ON p.id = r.%2$s
            WHERE r.equipment = :equipment AND r.started_at <= :at
              AND r.ended_at >= coalesce(:from::timestamptz, '-infinity') AND %3$s ORDER BY p.code
            """;

    private final CureVerdicts cures;
    private final TestVerdicts tests;
    private final Recipes recipes;
    private final Specifications specifications;
    private final JdbcClient jdbc;

    JudgedSince(
            CureVerdicts cures, TestVerdicts tests, Recipes recipes, Specifications specifications, JdbcClient jdbc) {
        this.cures = cures;
        this.tests = tests;
        this.recipes = recipes;
        this.specifications = specifications;
        this.jdbc = jdbc;
    }

    private record Stretch(OffsetDateTime at, @Nullable OffsetDateTime from) {}

    private record Asked(long equipment, String code, long cutoff) {}

    private record Kind<T>(String word, String schema, String thing, Verdicts<T> verdicts, TermsHistory<T> history) {}

    /** The five latest times that it was found bad, the newest first. */
    List<Since> of(long equipment, String code, long cutoff) {
        Asked asked = new Asked(equipment, code, cutoff);
        List<Since> judged = new ArrayList<>();
        List<Stretch> bad = jdbc.sql(BAD)
                .param("equipment", equipment)
                .param("cutoff", cutoff)
                .query((row, number) ->
                        new Stretch(row.getObject(1, OffsetDateTime.class), row.getObject(2, OffsetDateTime.class)))
                .list();
        for (Stretch stretch : bad) {
            judged.addAll(judged(new Kind<>("cure run", "cure", "recipe", cures, recipes), asked, stretch));
            judged.addAll(judged(
                    new Kind<>("test run", "electrical", "specification", tests, specifications), asked, stretch));
        }
        return judged;
    }

    private <T> List<Since> judged(Kind<T> kind, Asked asked, Stretch stretch) {
        return jdbc
                .sql(CODES.formatted(kind.schema(), kind.thing(), Known.at("r.entry")))
                .param("equipment", asked.equipment())
                .param("at", stretch.at())
                .param("from", stretch.from(), java.sql.Types.TIMESTAMP_WITH_TIMEZONE)
                .param("cutoff", asked.cutoff())
                .query(String.class)
                .list()
                .stream()
                .flatMap(code -> kind.history().find(code).stream()
                        .flatMap(id -> kind.history().of(id).stream().limit(1))
                        .map(released -> judged(kind, asked, stretch, code, released.revision())))
                .toList();
    }

    private static <T> Since judged(Kind<T> kind, Asked asked, Stretch stretch, String code, String revision) {
        Question question = new Question(code, revision, asked.code(), stretch.from(), stretch.at(), List.of());
        Map<Outcome, Integer> found = kind.verdicts().counted(question, asked.cutoff());
        List<Since.Count> counts = java.util.Arrays.stream(Outcome.values())
                .sorted(Comparator.reverseOrder())
                .filter(found::containsKey)
                .map(outcome -> new Since.Count(
                        outcome, Objects.requireNonNull(found.get(outcome)), scope(kind, question, outcome)))
                .toList();
        return new Since(stretch.at(), stretch.from(), kind.word(), code, revision, counts);
    }

    private static String scope(Kind<?> kind, Question question, Outcome outcome) {
        ObjectNode scope = JsonMapper.shared().createObjectNode();
        scope.put("of", kind.word().startsWith("cure") ? "cure-verdict" : "test-verdict");
        scope.put(kind.thing(), question.code());
        scope.put("revision", question.revision());
        scope.put("equipment", question.equipment());
        ObjectNode window = scope.putObject("window");
        if (question.from() != null) {
            window.put("from", question.from().toString());
        }
        window.put("to", String.valueOf(question.to()));
        scope.putArray("outcomes").add(outcome.words().replace(' ', '-'));
        return scope.toString();
    }
}
