package dev.sunthread.station;

import dev.sunthread.kernel.TraceKind;
import dev.sunthread.station.label.Label;
import dev.sunthread.station.work.Recording;
import dev.sunthread.station.work.Work;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * A scan that the page kept and that can't be understood when it comes: it goes to the inbox, with all that it and the
 * work in hand name, so that a trace counts it until a person settles it.
 */
final class KeptScan {

    private KeptScan() {}

    static void record(Recording recording, Scan scan, Work work, List<Label> labels, String reason, String remedy) {
        byte[] bytes = scan.text().getBytes(StandardCharsets.UTF_8);
        ObjectNode body = JsonNodeFactory.instance
                .objectNode()
                .put("file", "station " + recording.station())
                .put("lineNumber", 1)
                .put("length", bytes.length)
                .put("sha256", sha256(bytes))
                .put("text", scan.text());
        body.putArray("problems")
                .addObject()
                .put("field", "scan")
                .put("reason", reason)
                .put("remedy", remedy);
        ArrayNode names = body.putArray("names");
        labels.forEach(label -> named(names, label));
        work.units().forEach(unit -> name(names, TraceKind.UNIT, unit.serial()));
        work.taken().forEach(taken -> name(names, TraceKind.LOT, taken.lot()));
        recording.record("kept-line", body);
    }

    private static void named(ArrayNode names, Label label) {
        if (label instanceof Label.OfUnit unit) {
            name(names, TraceKind.UNIT, unit.name().serial());
        } else if (label instanceof Label.OfMaterial material) {
            name(names, TraceKind.LOT, material.lot());
        } else if (label instanceof Label.Unknown unknown && !unknown.text().startsWith(".")) {
            anything(names, unknown.text());
        } else if (label instanceof Label.Unrecorded read) {
            anything(names, read.name());
        }
    }

    /** Nothing tells for sure what kind of thing it is. */
    private static void anything(ArrayNode names, String text) {
        name(names, TraceKind.UNIT, text);
        name(names, TraceKind.LOT, text);
        name(names, TraceKind.CONTAINER, text);
    }

    private static void name(ArrayNode names, TraceKind kind, String name) {
        if (!name.isBlank() && name.length() <= 64) {
            names.addObject()
                    .put("kind", kind.name().toLowerCase(java.util.Locale.ROOT))
                    .put("name", name);
        }
    }

    private static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
