package dev.sunthread.journal;

import dev.sunthread.ledger.Envelope;
import dev.sunthread.ledger.Recorded;
import dev.sunthread.ledger.body.TextForm;
import dev.sunthread.ledger.body.Unreadable;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** The fields that an export adds to an envelope, and what is left of the line without them. */
record ExportedFields(
        ObjectNode rest,
        @Nullable OffsetDateTime recordedAt,
        @Nullable String recordedBy,
        @Nullable Long position,
        @Nullable String hash) {

    private static final String REMEDY =
            "Take the line as it was exported, or leave recordedAt, recordedBy, position and hash out to tell it anew";

    /** Takes them out of a line. @throws Unreadable if one is there and can't be read */
    static ExportedFields takenOutOf(ObjectNode line) {
        JsonNode recordedAt = line.remove("recordedAt");
        JsonNode recordedBy = line.remove("recordedBy");
        JsonNode position = line.remove("position");
        JsonNode hash = line.remove("hash");
        return new ExportedFields(line, moment(recordedAt), mark(recordedBy), number(position), text("hash", hash));
    }

    /** When it was recorded and by whom; nothing if the line does not say when. */
    @Nullable
    Recorded recorded() {
        return recordedAt == null ? null : new Recorded(recordedAt, recordedBy);
    }

    /** @throws Unreadable if the line says a hash that is not the envelope's */
    void hashFits(Envelope envelope) {
        if (hash != null && !hash.equals(HexFormat.of().formatHex(envelope.hash()))) {
            throw Unreadable.at("hash", "does not fit the envelope: the line was changed after its export", REMEDY);
        }
    }

    private static @Nullable OffsetDateTime moment(@Nullable JsonNode json) {
        try {
            return json == null ? null : OffsetDateTime.parse(json.isString() ? json.stringValue() : "");
        } catch (DateTimeException e) {
            throw Unreadable.at("recordedAt", "is not a date and time with offset", REMEDY);
        }
    }

    private static @Nullable Long number(@Nullable JsonNode json) {
        if (json == null) {
            return null;
        }
        if (!json.isIntegralNumber() || !json.canConvertToLong() || json.longValue() < 1) {
            throw Unreadable.at("position", "is not a whole number from 1", REMEDY);
        }
        return json.longValue();
    }

    private static @Nullable String mark(@Nullable JsonNode json) {
        String mark = text("recordedBy", json);
        if (mark != null && !TextForm.CODE.fits(mark)) {
            throw Unreadable.at("recordedBy", "is not text of " + TextForm.CODE.described(), REMEDY);
        }
        return mark;
    }

    private static @Nullable String text(String field, @Nullable JsonNode json) {
        if (json != null && !json.isString()) {
            throw Unreadable.at(field, "is not text", REMEDY);
        }
        return json == null ? null : json.stringValue();
    }
}
