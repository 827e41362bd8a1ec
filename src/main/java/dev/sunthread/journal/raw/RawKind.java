package dev.sunthread.journal.raw;

import dev.sunthread.journal.raw.Rows.Row;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What a file of raw data tells of: which kind of envelope its rows make. */
public enum RawKind {
    /** A row to each point of a sweep. */
    TEST_RUN("test-run") {
        @Override
        void fill(ObjectNode body, Rows rows, List<Row> run) {
            Row first = run.get(0);
            put(body, "specification", rows.needed(first, "specification"));
            put(body, "verdict", rows.needed(first, "verdict"));
            ObjectNode unit = body.putObject("unit");
            put(unit, "item", rows.needed(first, "item"));
            put(unit, "serial", rows.needed(first, "serial"));
            put(unit, "issuer", rows.told(first, "issuer"));
            grouped(rows, run, "sweep").forEach((name, points) -> {
                ObjectNode sweep = body.withArray("sweeps").addObject();
                put(sweep, "name", name);
                put(sweep, "irradiance", rows.numberIfTold(points.get(0), "irradiance"));
                put(sweep, "cellTemperature", rows.numberIfTold(points.get(0), "cellTemperature"));
                rows.numbers(points, "volts").forEach(sweep.putArray("volts")::add);
                rows.numbers(points, "amperes").forEach(sweep.putArray("amperes")::add);
            });
        }
    },
    /** A row to each reading of a sensor. */
    CURE_RUN("cure-run") {
        @Override
        void fill(ObjectNode body, Rows rows, List<Row> run) {
            Row first = run.get(0);
            put(body, "recipe", rows.needed(first, "recipe"));
            ArrayNode carriers = body.putArray("carriers");
            Rows.members(rows.told(first, "carriers"))
                    .forEach(carrier -> placed(carriers, carrier).put("carrier", nameOf(carrier)));
            ArrayNode units = body.putArray("units");
            Rows.members(rows.told(first, "units")).forEach(unit -> addUnit(units, unit));
            grouped(rows, run, "sensor").forEach((sensor, readings) -> {
                ObjectNode series = body.withArray("profile").addObject();
                put(series, "sensor", sensor);
                put(series, "position", rows.told(readings.get(0), "position"));
                put(series, "quantity", rows.needed(readings.get(0), "quantity"));
                put(series, "unitOfMeasure", rows.needed(readings.get(0), "unitOfMeasure"));
                rows.numbers(readings, "seconds").forEach(series.putArray("seconds")::add);
                rows.numbers(readings, "reading").forEach(series.putArray("readings")::add);
            });
        }
    };

    private static final String AT = " @ ";

    private final String envelope;

    RawKind(String envelope) {
        this.envelope = envelope;
    }

    /** The kind of envelope. */
    public String envelope() {
        return envelope;
    }

    abstract void fill(ObjectNode body, Rows rows, List<Row> run);

    /** The body of one run and when it ended. */
    ObjectNode body(Rows rows, String run, List<Row> of) {
        ObjectNode body = JsonMapper.shared().createObjectNode();
        put(body, "run", run);
        put(body, "equipment", rows.needed(of.get(0), "equipment"));
        put(body, "startedAt", rows.told(of.get(0), "startedAt"));
        fill(body, rows, of);
        return body;
    }

    private static Map<String, List<Row>> grouped(Rows rows, List<Row> run, String field) {
        Map<String, List<Row>> groups = new java.util.LinkedHashMap<>();
        run.forEach(row -> groups.computeIfAbsent(rows.needed(row, field), key -> new java.util.ArrayList<>())
                .add(row));
        return groups;
    }

    /** A member of a load; its position stands behind an @ with spaces around it. */
    private static ObjectNode placed(ArrayNode members, String member) {
        ObjectNode named = members.addObject();
        int at = member.indexOf(AT);
        put(
                named,
                "position",
                at < 0 ? null : member.substring(at + AT.length()).strip());
        return named;
    }

    private static String nameOf(String member) {
        int at = member.indexOf(AT);
        return at < 0 ? member : member.substring(0, at).strip();
    }

    private static void addUnit(ArrayNode units, String member) {
        String unit = nameOf(member);
        int space = unit.indexOf(' ');
        ObjectNode named = placed(units, member);
        named.put("item", space < 0 ? unit : unit.substring(0, space));
        named.put("serial", space < 0 ? "" : unit.substring(space + 1).strip());
    }

    private static void put(ObjectNode node, String field, @Nullable String value) {
        if (value != null) {
            node.put(field, value);
        }
    }
}
