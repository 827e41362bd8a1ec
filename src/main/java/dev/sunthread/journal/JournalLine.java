package dev.sunthread.journal;

import dev.sunthread.ledger.Envelope;
import dev.sunthread.ledger.EnvelopeReader;
import dev.sunthread.ledger.Recorded;
import dev.sunthread.ledger.body.Unreadable;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * One line of a journal: its first line, its end, or an envelope; an exported envelope also says when and by whom it was
 * recorded, at which position, and its hash.
 */
sealed interface JournalLine {

    /** The version of the format written and read here. */
    int VERSION = 1;

    /** The first line. */
    record Start() implements JournalLine {}

    /**
     * The last line: how many entries stand before it, and the hash over all lines before it.
     *
     * @param head the root of the tree over their hashes; absent from exports of earlier versions
     */
    record End(long entries, String digest, @Nullable String head) implements JournalLine {}

    /** An envelope; the others are there if another database exported it. */
    record Said(
            Envelope envelope,
            @Nullable Recorded recorded,
            @Nullable Long position) implements JournalLine {}

    /** Reads a line. @throws Unreadable if it is none of the three, or its hash does not fit it */
    static JournalLine read(RawLine raw) {
        if (raw.isCut()) {
            throw Unreadable.at(
                    "line",
                    "is " + raw.length() + " bytes long, more than " + RawLine.LONGEST,
                    "Split it into envelopes of their own lines");
        }
        String text = raw.text()
                .orElseThrow(() -> Unreadable.at(
                        "line", "is not UTF-8 text", "Send the journal as UTF-8 text, one JSON object a line"));
        return read(EnvelopeReader.parse(text));
    }

    private static JournalLine read(JsonNode json) {
        if (!(json instanceof ObjectNode whole) || whole.has("body")) {
            return said(json);
        }
        // an envelope that lacks its body is not taken for one of these because of a field too many
        if (whole.has("journal") && whole.size() == 1) {
            return start(whole.get("journal"));
        }
        if (whole.has("end")
                && whole.has("entries")
                && whole.has("digest")
                && whole.size() == (whole.has("head") ? 4 : 3)) {
            return end(whole);
        }
        return said(json);
    }

    private static Start start(JsonNode version) {
        versionIsThis(version, "journal");
        return new Start();
    }

    private static End end(ObjectNode json) {
        versionIsThis(json.get("end"), "end");
        JsonNode head = json.get("head");
        return new End(
                json.get("entries").asLong(-1),
                json.get("digest").asString(""),
                head == null ? null : head.asString(""));
    }

    private static void versionIsThis(JsonNode version, String field) {
        if (version.isIntegralNumber() && version.asLong(0) > VERSION) {
            throw Unreadable.at(
                    field,
                    "is version " + version.asLong(0) + ", which a newer program wrote; this one reads version "
                            + VERSION,
                    "Take it in with that program or a newer one");
        }
        if (!version.isIntegralNumber() || version.asLong(0) != VERSION) {
            throw Unreadable.at(field, "is not version " + VERSION, "Export it again with a program of this version");
        }
    }

    private static Said said(JsonNode json) {
        if (!(json instanceof ObjectNode whole)) {
            return new Said(EnvelopeReader.read(json), null, null);
        }
        ExportedFields exported = ExportedFields.takenOutOf(EnvelopeReader.shallowCopy(whole));
        Envelope envelope = EnvelopeReader.read(exported.rest());
        exported.hashFits(envelope);
        return new Said(envelope, exported.recorded(), exported.position());
    }
}
