package dev.sunthread.journal.raw;

import dev.sunthread.journal.Imports;
import dev.sunthread.journal.LineOutcome;
import dev.sunthread.journal.Sender;
import dev.sunthread.journal.SentFile;
import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.body.JsonFault;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Takes files of raw data in: CSV with a row to each point or reading, or JSON with an object to each run. Each run
 * becomes an envelope that is told; sending a file again records nothing twice.
 */
@Service
public class RawFiles {

    private static final JsonMapper JSON = JsonMapper.shared();

    private final Imports imports;

    RawFiles(Imports imports) {
        this.imports = imports;
    }

    /**
     * Takes one file in.
     *
     * @param mapping which column holds which field, for CSV
     * @return what became of each run, or why nothing of the file could be taken in
     */
    public RawReport take(RawKind kind, byte[] file, @Nullable String mapping, Sender sender) throws IOException {
        List<RawReport.Run> runs = new ArrayList<>();
        try {
            String text = new String(SentFile.text(file), StandardCharsets.UTF_8);
            Map<String, ObjectNode> bodies =
                    text.stripLeading().startsWith("[") || text.stripLeading().startsWith("{")
                            ? RawJson.bodies(text)
                            : csv(kind, text, mapping, runs);
            String mark = hash(file);
            for (Map.Entry<String, ObjectNode> run : bodies.entrySet()) {
                runs.add(told(kind, mark, run.getKey(), run.getValue(), sender));
            }
            return new RawReport(sender.file(), runs, null, null);
        } catch (Refused e) {
            return new RawReport(sender.file(), runs, e.reason(), e.remedy());
        } catch (JacksonException e) {
            return new RawReport(
                    sender.file(), runs, "The file is no JSON: " + JsonFault.words(e), "Give an array of runs, or CSV");
        }
    }

    private static Map<String, ObjectNode> csv(
            RawKind kind, String text, @Nullable String mapping, List<RawReport.Run> refused) {
        Rows rows = Rows.of(text, Mapping.of(mapping));
        Map<String, ObjectNode> bodies = new java.util.LinkedHashMap<>();
        rows.grouped("run").forEach((run, of) -> {
            try {
                ObjectNode body = kind.body(rows, run, of);
                body.put("occurredAt", rows.needed(of.get(0), "endedAt"));
                bodies.put(run, body);
            } catch (Refused e) {
                refused.add(new RawReport.Run(run, "not taken in", e.reason(), e.remedy(), null));
            }
        });
        return bodies;
    }

    private RawReport.Run told(RawKind kind, String mark, String run, ObjectNode body, Sender sender)
            throws IOException {
        JsonNode at = body.remove("occurredAt");
        ObjectNode envelope = JSON.createObjectNode();
        envelope.put("id", "raw-" + mark + "-" + run);
        envelope.put("kind", kind.envelope());
        envelope.put("version", 1);
        if (at != null) {
            envelope.set("occurredAt", at);
        }
        envelope.put("actor", sender.actor());
        envelope.put("source", sender.file().replace(' ', '_'));
        envelope.set("body", body);
        Optional<LineOutcome> outcome = imports.takeLine(envelope.toString(), sender);
        return outcome.map(line -> RawReport.Run.of(run, line))
                .orElseGet(() -> new RawReport.Run(run, "not taken in", "It is empty", "Look into the file", null));
    }

    private static String hash(byte[] file) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(file);
            return HexFormat.of().formatHex(digest, 0, 8);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
