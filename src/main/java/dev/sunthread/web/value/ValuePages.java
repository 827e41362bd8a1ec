package dev.sunthread.web.value;

import dev.sunthread.catalog.ValueBounds;
import dev.sunthread.kernel.verdict.Limits;
import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Span;
import dev.sunthread.ledger.Known;
import dev.sunthread.web.Paged;
import dev.sunthread.web.chart.Chart;
import dev.sunthread.web.chart.ChartDraft;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Reads process values of steps at a cut-off. */
@Repository
class ValuePages {

    private static final int A_PAGE = 100;
    private static final int DRAWN = 1_000;

    private static final String OF_VALUE = """
            FROM production.step_value v JOIN production.step s USING (entry)
            WHERE s.operation = :operation AND v.name = :value AND %s
            """.formatted(Known.at("s.entry"));

    private static final String READINGS = """
            SELECT s.ended_at AS at, st.code AS station, v.value, v.unit_of_measure AS unit, e.id AS entry,
              (SELECT string_agg(i.number || ' ' || u.serial, ', ' ORDER BY i.number, u.serial)
               FROM production.step_unit m JOIN production.unit u ON u.id = m.unit JOIN catalog.item i ON i.id = u.item
               WHERE m.entry = s.entry) AS units
            FROM production.step_value v JOIN production.step s USING (entry)
            JOIN catalog.station st ON st.id = s.station JOIN ledger.entry e ON e.number = s.entry
            WHERE s.operation = :operation AND v.name = :value AND %s
            ORDER BY s.ended_at DESC, s.entry DESC LIMIT :most OFFSET :offset
            """.formatted(Known.at("s.entry"));

    private static final String LIMITS = """
            SELECT DISTINCT ON (r.item) l.value, l.unit_of_measure, l.least, l.most
            FROM catalog.route_revision r JOIN catalog.route_value l USING (entry)
            WHERE l.operation = :operation AND l.value = :value AND %s
            ORDER BY r.item, r.effective_at DESC, r.entry DESC
            """.formatted(Known.at("r.entry"));

    private static final String KNOWN = """
            SELECT s.operation, v.name AS value, min(v.unit_of_measure) AS unit, count(*) AS steps,
              min(v.value) AS least, max(v.value) AS most
            FROM production.step_value v JOIN production.step s USING (entry) WHERE %s
            GROUP BY s.operation, v.name ORDER BY s.operation, v.name
            """.formatted(Known.at("s.entry"));

    private final JdbcClient jdbc;

    ValuePages(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<ValuePage.Known> known(long cutoff) {
        return jdbc.sql(KNOWN)
                .param("cutoff", cutoff)
                .query(DataClassRowMapper.newInstance(ValuePage.Known.class))
                .list();
    }

    ValuePage read(String operation, String value, @Nullable Integer page, long cutoff) {
        long total = asked("SELECT count(*) " + OF_VALUE, operation, value, cutoff)
                .query(Long.class)
                .single();
        List<ValueBounds> limits = asked(LIMITS, operation, value, cutoff)
                .query(DataClassRowMapper.newInstance(ValueBounds.class))
                .list();
        return new ValuePage(
                operation,
                value,
                chart(value, readings(operation, value, cutoff, 0, DRAWN), limits),
                limits.stream().map(ValuePages::words).toList(),
                limits.stream()
                        .flatMap(bounds -> outside(operation, value, bounds))
                        .distinct()
                        .toList(),
                Paged.of(page, A_PAGE, total, (offset, most) -> readings(operation, value, cutoff, offset, most)));
    }

    List<ValuePage.Reading> readings(String operation, String value, long cutoff, long offset, int most) {
        return asked(READINGS, operation, value, cutoff)
                .param("most", most)
                .param("offset", offset)
                .query(DataClassRowMapper.newInstance(ValuePage.Reading.class))
                .list();
    }

    private JdbcClient.StatementSpec asked(String sql, String operation, String value, long cutoff) {
        return jdbc.sql(sql).param("operation", operation).param("value", value).param("cutoff", cutoff);
    }

    private static @Nullable Chart chart(String value, List<ValuePage.Reading> newest, List<ValueBounds> limits) {
        if (newest.size() < 2) {
            return null;
        }
        ValuePage.Reading first = newest.get(newest.size() - 1);
        double[] days = newest.stream()
                .mapToDouble(one -> Duration.between(first.at(), one.at()).toSeconds() / 86_400.0)
                .toArray();
        double[] values =
                newest.stream().mapToDouble(one -> one.value().doubleValue()).toArray();
        ChartDraft draft = new ChartDraft(
                        Phrase.of("chart.value", value),
                        Phrase.of("chart.days", String.valueOf(newest.size())),
                        Phrase.of("chart.with-unit", value, first.unit()))
                .line(value, days, values);
        limits.stream().findFirst().ifPresent(bounds -> draft.band(Phrase.of("chart.within"), span(bounds)));
        return draft.placed();
    }

    private static Phrase words(ValueBounds bounds) {
        Double least = bounds.least() == null ? null : bounds.least().doubleValue();
        Double most = bounds.most() == null ? null : bounds.most().doubleValue();
        return new Limits(least, most, 0).words(bounds.unitOfMeasure());
    }

    private static Span span(ValueBounds bounds) {
        return new Span(
                bounds.least() == null
                        ? Double.NEGATIVE_INFINITY
                        : bounds.least().doubleValue(),
                bounds.most() == null ? Double.POSITIVE_INFINITY : bounds.most().doubleValue());
    }

    private static Stream<ValuePage.Outside> outside(String operation, String value, ValueBounds bounds) {
        return Stream.of(
                        bounds.least() == null ? null : scope(operation, value, null, bounds.least(), "value.below"),
                        bounds.most() == null ? null : scope(operation, value, bounds.most(), null, "value.above"))
                .flatMap(Stream::ofNullable);
    }

    private static ValuePage.Outside scope(
            String operation, String value, @Nullable BigDecimal least, @Nullable BigDecimal most, String side) {
        ObjectNode of = JsonMapper.shared().createObjectNode();
        of.put("of", "value").put("value", value);
        if (least != null) {
            of.put("least", least.toPlainString());
        }
        if (most != null) {
            of.put("most", most.toPlainString());
        }
        ObjectNode steps = JsonMapper.shared().createObjectNode();
        steps.put("of", "all");
        steps.putArray("scopes").add(of).addObject().put("of", "operation").put("operation", operation);
        return new ValuePage.Outside(Phrase.of(side, String.valueOf(least == null ? most : least)), steps.toString());
    }
}
