package dev.sunthread.journal.web;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.journal.Exports;
import dev.sunthread.journal.ImportSummary;
import dev.sunthread.journal.Imports;
import dev.sunthread.journal.LineOutcome;
import dev.sunthread.journal.Restores;
import dev.sunthread.journal.SentFile;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.ExampleObject;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletResponse;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import tools.jackson.databind.json.JsonMapper;

/** Whole journals over HTTP, streamed both ways. */
@RestController
@RequestMapping("/api/v1/journal")
@Tag(name = "Journal", description = "Everything recorded, as lines of one documented format")
class JournalController {

    static final String NDJSON = "application/x-ndjson";

    private static final int HELD_BACK = 128 * 1024;

    private final Imports imports;
    private final Exports exports;
    private final Restores restores;
    private final HandedOver handing;
    private final JsonMapper json;

    JournalController(Imports imports, Exports exports, Restores restores, HandedOver handing, JsonMapper json) {
        this.imports = imports;
        this.exports = exports;
        this.restores = restores;
        this.handing = handing;
        this.json = json;
    }

    @Operation(
            summary = "Take a journal in",
            description =
                    "Any size, packed with gzip or not; each line is reported once it is committed, the last line of"
                            + " the answer counts them. Lines that can't be read or identified are kept in the inbox. What plainly"
                            + " is no text is refused with status 415. Behind 100 lines in a row that can't be read, or where a"
                            + " packed file is cut, it stops: the last line says so in \"stopped\", with status 422 while nothing of"
                            + " the answer was sent; goOn=true goes on behind lines that can't be read.")
    @ApiResponse(responseCode = "200", content = @Content(mediaType = NDJSON, examples = @ExampleObject("""
                                            {"line":1,"outcome":"ACCEPTED","id":"b-1","findings":[],"problems":[]}
                                            {"accepted":1,"acceptedWithFinding":0,"knownBefore":0,"keptInInbox":0}
                                            """)))
    @Needs(Right.IMPORT)
    @PostMapping(path = "/import", consumes = MediaType.ALL_VALUE)
    void takeIn(
            InputStream journal,
            HttpServletResponse response,
            @RequestParam(defaultValue = "unnamed") String file,
            @RequestParam(defaultValue = "false") boolean goOn)
            throws IOException {
        InputStream text = SentFile.text(journal);
        response.setContentType(NDJSON);
        // so much is held back, so that a short answer can still say by its status that the import stopped
        response.setBufferSize(HELD_BACK);
        Writer writer = new BufferedWriter(new OutputStreamWriter(response.getOutputStream(), StandardCharsets.UTF_8));
        ImportSummary summary = imports.run(text, handing.over(file), goOn, line -> write(writer, line));
        handing.tookIn(file, summary);
        if (summary.stopped() != null && !response.isCommitted()) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
        }
        writer.write(json.writeValueAsString(summary) + "\n");
        writer.flush();
    }

    private void write(Writer writer, LineOutcome line) {
        try {
            writer.write(json.writeValueAsString(line) + "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Operation(
            summary = "Give everything recorded",
            description = "In the order of positions, with when it was recorded, its position and its hash; the last"
                    + " line carries the count and the hash over all hashes.")
    @Needs(Right.EXPORT)
    @GetMapping(path = "/export", produces = NDJSON)
    void giveOut(HttpServletResponse response) throws IOException {
        response.setContentType(NDJSON);
        response.setHeader("Content-Disposition", "attachment; filename=\"journal.ndjson\"");
        handing.gaveOut();
        exports.write(response.getOutputStream());
    }

    @Operation(
            summary = "Restore a whole export into an empty database",
            description = "All of it or nothing; every question has the same answer as before.")
    @Needs(Right.RESTORE)
    @PostMapping(path = "/restore", consumes = MediaType.ALL_VALUE)
    Map<String, Long> restore(InputStream journal) throws IOException {
        return Map.of("restored", handing.restored(restores.run(SentFile.text(journal), count -> {})));
    }
}
