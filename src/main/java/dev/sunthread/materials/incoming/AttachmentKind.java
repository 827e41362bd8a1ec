package dev.sunthread.materials.incoming;

import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import dev.sunthread.materials.LotRules;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** A document was attached: a certificate, a photograph, a data sheet. */
@Component
class AttachmentKind implements Kind<AttachmentKind.Body> {

    private static final Pattern MEDIA_TYPE = Pattern.compile("[a-z0-9][a-z0-9.+-]*/[a-z0-9][a-z0-9.+_-]*");

    record Body(
            @Field(value = "What people call it, such as its file name", text = TextForm.NAME)
            String name,

            @Field("What it is, as a media type such as application/pdf")
            String mediaType,

            @Field(value = "SHA-256 of its bytes", text = TextForm.SHA256)
            String sha256,

            @Field(value = "Its bytes", text = TextForm.BASE64)
            String content,

            @Field("The lot it is about") @Nullable String lot) {

        Body {
            if (!MEDIA_TYPE.matcher(mediaType).matches()) {
                throw new Contradiction("mediaType", "is no media type", "Give one such as \"application/pdf\"");
            }
        }
    }

    private final LotRules rules;
    private final JdbcClient jdbc;

    AttachmentKind(LotRules rules, JdbcClient jdbc) {
        this.rules = rules;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "attachment";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "A document was attached; others name it by its SHA-256.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        byte[] content = HashedContent.read(body.content(), body.sha256());
        Long lot = body.lot() == null ? null : rules.named(fact, body.lot());
        jdbc.sql("INSERT INTO materials.attachment (entry, sha256, name, media_type, content, lot)"
                        + " VALUES (?, ?, ?, ?, ?, ?)")
                .params(fact.entry(), body.sha256(), body.name(), body.mediaType(), content)
                .param(lot)
                .update();
    }
}
