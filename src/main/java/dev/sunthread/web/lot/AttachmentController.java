package dev.sunthread.web.lot;

import dev.sunthread.ledger.Sealer;
import dev.sunthread.materials.incoming.Attachments;
import dev.sunthread.materials.incoming.Document;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.nio.charset.StandardCharsets;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** Attached documents as they came, to be kept as files: a browser is not to run what a stranger wrote. */
@RestController
@Tag(name = "Attachments", description = "Documents by the hash of their bytes")
class AttachmentController {

    private final Sealer sealer;
    private final Attachments attachments;

    AttachmentController(Sealer sealer, Attachments attachments) {
        this.sealer = sealer;
        this.attachments = attachments;
    }

    @Operation(summary = "Give an attached document", description = "Its bytes as they came, under its name.")
    @GetMapping("/attachments/{sha256}")
    ResponseEntity<byte[]> attachment(@PathVariable String sha256) {
        return attachments
                .document(sha256, sealer.seal())
                .map(AttachmentController::file)
                .orElseGet(() -> ResponseEntity.notFound().build());
    }

    private static ResponseEntity<byte[]> file(Document document) {
        var named = ContentDisposition.attachment()
                .filename(document.name(), StandardCharsets.UTF_8)
                .build();
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType(document.mediaType()))
                .header(HttpHeaders.CONTENT_DISPOSITION, named.toString())
                .header("X-Content-Type-Options", "nosniff")
                .header("Content-Security-Policy", "sandbox")
                .body(document.content());
    }
}
