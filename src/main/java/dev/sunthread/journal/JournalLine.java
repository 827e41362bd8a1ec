package dev.sunthread.journal;

import dev.sunthread.ledger.Envelope;
import dev.sunthread.ledger.EnvelopeReader;
import dev.sunthread.ledger.body.Unreadable;
import java.time.OffsetDateTime;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * One line of a journal: its first line, its end, or an envelope; an exported envelope also says when it was recorded,
 * at which position, and its hash.
 */
sealed interface JournalLine {

    /** The version of the format written and read here. */
    int VERSION = 1;

    /** The first line. */
    record Start() implements JournalLine {}

    /** The last line: how many entries stand before it, and the hash over all their hashes. */
    record End(long entries, String digest) implements JournalLine {}

    /** An envelope; the other three are there if another database exported it. */
    record Said(
            Envelope envelope,
            @Nullable OffsetDateTime recordedAt,
            @Nullable Long position,
            @Nullable String hash) implements JournalLine {

        boolean hashIsRight() {
            return HexFormat.of().formatHex(envelope.hash()).equals(hash);
        }
    }

    /** Reads a line. @throws Unreadable if it is none of the three */
    static JournalLine read(RawLine raw) {
        if (raw.isCut()) {
            throw Unreadable.at(
                    "line",
                    "is " + raw.length() + " bytes long, more than " + LineSplitter.LONGEST,
                    "Split it into envelopes of their own lines");
        }
        String text = raw.text()
                .orElseThrow(() -> Unreadable.at(
                        "line", "is not UTF-8 text", "Send the journal as UTF-8 text, one JSON object a line"));
        return read(EnvelopeReader.parse(text));
    }

    private static JournalLine read(JsonNode json) {
        if (json.has("journal")) {
            return start(json);
        }
        if (json.has("end")) {
            return new End(json.path("entries").asLong(-1), json.path("digest").asString(""));
        }
        if (!(json instanceof ObjectNode whole)) {
            return new Said(EnvelopeReader.read(json), null, null, null);
        }
        ObjectNode envelope = whole.deepCopy();
        JsonNode recordedAt = envelope.remove("recordedAt");
        JsonNode position = envelope.remove("position");
        JsonNode hash = envelope.remove("hash");
        return new Said(
                EnvelopeReader.read(envelope),
                moment(recordedAt),
                position == null ? null : position.asLong(),
                hash == null ? null : hash.asString());
    }

    private static Start start(JsonNode json) {
        if (json.path("journal").asInt(0) != VERSION) {
            throw Unreadable.at(
                    "journal", "is not version " + VERSION, "Export it again with a program of this version");
        }
        return new Start();
    }

    private static @Nullable OffsetDateTime moment(@Nullable JsonNode json) {
        try {
            return json == null ? null : OffsetDateTime.parse(json.asString());
        } catch (java.time.DateTimeException e) {
            throw Unreadable.at("recordedAt", "is not a date and time with offset", "Export the journal again");
        }
    }
}
