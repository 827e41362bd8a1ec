package dev.sunthread.ledger;

import dev.sunthread.ledger.body.Shape;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.OffsetDateTime;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * One thing said to the door: who says it, from where, when it occurred, of which kind it is and its body. The
 * canonical form (RFC 8785) keeps every digit and offset as sent.
 */
public record Envelope(EnvelopeHead head, ObjectNode body, String canonical) {

    /** An envelope made by this program; the moment is written with its offset, to the microsecond. */
    public static <B> Envelope of(EnvelopeHead head, B body) {
        @SuppressWarnings("unchecked")
        Shape<B> shape = (Shape<B>) Shape.of(body.getClass());
        return of(head, shape.write(body));
    }

    public static Envelope of(EnvelopeHead head, ObjectNode body) {
        ObjectNode json = Shape.of(EnvelopeHead.class).write(head);
        json.set("body", body);
        return new Envelope(head, body, CanonicalJson.of(json));
    }

    /** The same, said by somebody else. */
    public Envelope saidBy(String actor) {
        ObjectNode json = json().put("actor", actor);
        EnvelopeHead by =
                new EnvelopeHead(head.id(), head.kind(), head.version(), head.occurredAt(), actor, head.source());
        return new Envelope(by, body, CanonicalJson.of(json));
    }

    public String id() {
        return head.id();
    }

    public OffsetDateTime occurredAt() {
        return head.occurredAt();
    }

    /** SHA-256 over a zero byte and the canonical form: the leaf hash of RFC 9162 section 2.1.1. */
    public byte[] hash() {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update((byte) 0);
            return digest.digest(canonical.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The same happening said as an envelope's whole JSON object. */
    public ObjectNode json() {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.setAll((ObjectNode) EnvelopeReader.parse(canonical));
        return json;
    }
}
