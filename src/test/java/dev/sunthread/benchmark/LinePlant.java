package dev.sunthread.benchmark;

import dev.sunthread.demo.told.JournalWriter;
import dev.sunthread.ledger.Envelope;
import dev.sunthread.ledger.EnvelopeHead;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Tells a line in its order: receivers in trays of 24, each bonded with three uses, cured on the tray, tested and put
 * into a wall of twelve; walls into modules, and those shipped. New lots are loaded now and then.
 */
final class LinePlant {

    private static final int TRAY = 24;
    private static final int WALL = 12;
    private static final OffsetDateTime BEGIN = OffsetDateTime.parse("2026-01-05T06:00:00+01:00");

    private final Consumer<String> journal;
    private int said;
    private OffsetDateTime now = BEGIN;

    private LinePlant(Consumer<String> journal) {
        this.journal = journal;
    }

    /** Gives the lines of so many receivers, rounded up to whole trays; gives how many envelopes it told. */
    static int tell(int receivers, Consumer<String> journal) {
        LinePlant plant = new LinePlant(journal);
        plant.release();
        for (int tray = 0; tray * TRAY < receivers; tray++) {
            if (tray % 5 == 0) {
                plant.load(tray / 5);
            }
            plant.build(tray);
        }
        return plant.said;
    }

    private void release() {
        JsonMapper json = JsonMapper.shared();
        try (InputStream file = LinePlant.class.getResourceAsStream("/benchmark/line-definitions.ndjson")) {
            new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .map(json::readTree)
                    .forEach(line -> say(line.get("kind").stringValue(), (ObjectNode) line.get("body")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void load(int n) {
        List.of("ADH", "SOLDER", "WIRE").forEach(item -> {
            String position = Map.of("ADH", "V1", "SOLDER", "V2", "WIRE", "V3").get(item);
            say(
                    "receipt",
                    Map.of(
                            "lot",
                            item + n,
                            "item",
                            item,
                            "quantity",
                            "500",
                            "unitOfMeasure",
                            "g",
                            "supplier",
                            "Far Supplier",
                            "supplierLots",
                            List.of("S" + n)));
            if (n > 0) {
                say("discharge", Map.of("station", "BOND", "position", position));
            }
            say("charge", Map.of("lot", item + n, "station", "BOND", "position", position));
        });
    }

    private void build(int tray) {
        int lot = tray / 5;
        String carrier = "TRAY-" + tray % 20;
        List<Map<String, Object>> units = IntStream.range(0, TRAY)
                .mapToObj(i -> unit("RCV", "R%06d".formatted(tray * TRAY + i)))
                .toList();
        say("birth", Map.of("units", units, "station", "BOND"));
        say(
                "carrier-load",
                Map.of(
                        "carrier",
                        carrier,
                        "loads",
                        units.stream().map(unit -> Map.of("unit", unit)).toList()));
        units.forEach(unit -> bond(unit, lot));
        cure(tray, units);
        say("step", Map.of("operation", "inspect", "station", "BOND", "units", units));
        say("carrier-unload", Map.of("carrier", carrier));
        units.forEach(unit -> test(unit, "T" + said));
        attach(tray, "ADH" + lot);
        assemble(tray, units);
    }

    private void cure(int tray, List<Map<String, Object>> units) {
        OffsetDateTime cured = now;
        now = now.plusMinutes(30);
        say(
                "cure-run",
                Map.of(
                        "run",
                        "C" + tray,
                        "recipe",
                        "CURE",
                        "equipment",
                        "OVEN",
                        "startedAt",
                        cured.format(DateTimeFormatter.ISO_OFFSET_DATE_TIME),
                        "units",
                        units));
    }

    /** A curve of 25 points for each receiver. */
    private void attach(int tray, String lot) {
        byte[] curves = curves(tray);
        say(
                "attachment",
                Map.of(
                        "name",
                        "curves.csv",
                        "mediaType",
                        "text/csv",
                        "content",
                        Base64.getEncoder().encodeToString(curves),
                        "sha256",
                        JournalWriter.sha256Of(new String(curves, StandardCharsets.UTF_8)),
                        "lot",
                        lot));
    }

    private void assemble(int tray, List<Map<String, Object>> units) {
        Map<String, Object> module = unit("MODULE", "M" + tray);
        say(
                "birth",
                Map.of("units", List.of(module, unit("WALL", "W" + tray + "-1"), unit("WALL", "W" + tray + "-2"))));
        for (int i = 0; i < TRAY; i++) {
            put(units.get(i), unit("WALL", "W" + tray + "-" + (1 + i / WALL)), "R" + (1 + i % WALL));
        }
        put(unit("WALL", "W" + tray + "-1"), module, "W1");
        put(unit("WALL", "W" + tray + "-2"), module, "W2");
        say("shipment", Map.of("shipment", "S" + tray, "consignee", "Sunny Field", "units", List.of(module)));
    }

    private void bond(Map<String, Object> unit, int lot) {
        say(
                "step",
                Map.of(
                        "operation",
                        "bond",
                        "station",
                        "BOND",
                        "units",
                        List.of(unit),
                        "uses",
                        List.of(
                                Map.of("item", "ADH", "lot", "ADH" + lot, "position", "V1"),
                                Map.of(
                                        "item",
                                        "SOLDER",
                                        "lot",
                                        "SOLDER" + lot,
                                        "quantity",
                                        "0.25",
                                        "unitOfMeasure",
                                        "g"),
                                Map.of("item", "WIRE", "position", "V3")),
                        "values",
                        List.of(value("force", "1.25", "N"), value("time", "350", "ms"))));
    }

    private static Map<String, Object> value(String name, String value, String unit) {
        return Map.of("name", name, "value", value, "unitOfMeasure", unit);
    }

    private void test(Map<String, Object> unit, String run) {
        say("test-run", Map.of("run", run, "unit", unit, "specification", "IV", "equipment", "RIG", "verdict", "pass"));
    }

    private void put(Map<String, Object> child, Map<String, Object> parent, String position) {
        say("installation", Map.of("child", Map.of("unit", child), "parent", parent, "position", position));
    }

    private static byte[] curves(int tray) {
        StringBuilder points = new StringBuilder();
        IntStream.range(0, TRAY * 25)
                .forEach(i -> points.append(i * 0.11).append(',').append(tray).append('\n'));
        return points.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static Map<String, Object> unit(String item, String serial) {
        return Map.of("item", item, "serial", serial);
    }

    private void say(String kind, Map<String, Object> body) {
        say(kind, (ObjectNode) JsonMapper.shared().valueToTree(body));
    }

    private void say(String kind, ObjectNode body) {
        now = now.plusSeconds(10);
        EnvelopeHead head = new EnvelopeHead("line-" + ++said, kind, 1, now, "op-1", "line");
        journal.accept(Envelope.of(head, body).canonical());
    }
}
