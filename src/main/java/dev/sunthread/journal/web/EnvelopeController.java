package dev.sunthread.journal.web;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.journal.Imports;
import dev.sunthread.journal.LineOutcome;
import dev.sunthread.ledger.Acceptance;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.EnvelopeReader;
import dev.sunthread.ledger.Manner;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.ExampleObject;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.io.IOException;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;

/** Single envelopes over HTTP: asked to be done, or told afterwards. */
@RestController
@RequestMapping(path = "/api/v1/envelopes", consumes = MediaType.APPLICATION_JSON_VALUE)
@Tag(name = "Envelopes", description = "One happening or definition at a time")
@Needs(Right.WORK)
class EnvelopeController {

    private static final String EXAMPLE = """
            {"id": "bond-1-000017", "kind": "step", "version": 1, "occurredAt": "2026-03-02T10:15:04+01:00",
             "actor": "op-07", "source": "BOND-1",
             "body": {"operation": "bond", "station": "BOND-1", "units": [{"item": "RCV-10", "serial": "R000123"}],
                      "uses": [{"item": "ADH-20", "lot": "L-0417", "position": "V1"}]}}
            """;

    private final Door door;
    private final Imports imports;
    private final Saying saying;

    EnvelopeController(Door door, Imports imports, Saying saying) {
        this.door = door;
        this.imports = imports;
        this.saying = saying;
    }

    @Operation(
            summary = "Ask for something to be done",
            description =
                    "A broken rule refuses it with status 409, reason and remedy; nothing is recorded then. The actor"
                            + " is whoever is signed in or whose token is sent, whatever the envelope says.",
            requestBody =
                    @io.swagger.v3.oas.annotations.parameters.RequestBody(
                            content = @Content(examples = @ExampleObject(EXAMPLE))))
    @PostMapping("/do")
    ResponseEntity<Acceptance> ask(@RequestBody String envelope) {
        Acceptance accepted = door.accept(saying.said(EnvelopeReader.read(envelope)), Manner.DO);
        return ResponseEntity.status(accepted.isNew() ? HttpStatus.CREATED : HttpStatus.OK)
                .body(accepted);
    }

    @Operation(
            summary = "Tell what was done",
            description =
                    "Never refused: a broken rule is recorded with a finding, and what can't be read or identified"
                            + " is kept in the inbox. The actor is whoever is signed in or whose token is sent; the token"
                            + " of a station may tell what others did there, and keeps their mark.",
            requestBody =
                    @io.swagger.v3.oas.annotations.parameters.RequestBody(
                            content = @Content(examples = @ExampleObject(EXAMPLE))))
    @PostMapping("/told")
    ResponseEntity<LineOutcome> tell(@RequestBody String envelope) throws IOException {
        return imports.takeLine(envelope, saying.teller(envelope, "POST /api/v1/envelopes/told"))
                .map(ResponseEntity::ok)
                .orElseGet(() -> ResponseEntity.noContent().build());
    }
}
