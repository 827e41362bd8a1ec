package dev.sunthread.genealogy.web;

import dev.sunthread.genealogy.AnswerHead;
import dev.sunthread.genealogy.LinePage;
import dev.sunthread.genealogy.TraceLimits;
import dev.sunthread.genealogy.TraceProgress;
import dev.sunthread.genealogy.Traced;
import dev.sunthread.genealogy.Traces;
import dev.sunthread.kernel.Recorder;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.ExampleObject;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletResponse;
import java.net.URI;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springdoc.core.annotations.ParameterObject;
import org.springframework.http.HttpHeaders;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.servlet.ModelAndView;

/** Traces over HTTP, with the parameters of the trace page. */
@RestController
@Tag(name = "Traces", description = "Where something went, and what is in it")
class TraceApi {

    private static final String CSV_EXAMPLE = """
            kind,level,item,name,issuer,ever,now,at_shipment,at,reason,place,holds,shipments,path,within,spot
            unit,receiver,RCV-10,R000123,plant,certain,certain,,,lot L-0417 was scanned,at station BOND,,,step 1 | step 2,,at station BOND
            """;
    private static final String JSON_EXAMPLE = """
            {"id": "3f1c", "question": {"way": "FORWARD", "lot": "L-0417"}, "suspects": ["L-0417"], "cutoff": 1200,
             "cutoffRecordedAt": "2026-03-02T10:15:04Z", "hash": "9b0c",
             "counts": [{"when": "EVER", "level": "receiver", "certain": 40, "possible": 2, "unproven": 0}],
             "openFindings": 1, "openLines": 0,
             "stationsBehind": [{"entry": "behind-7", "station": "BOND", "since": "2026-03-02T09:40:00Z", "page": null,
                                 "why": "Its network is down; steps are on paper"}],
             "notes": [], "instead": null,
             "lines": [], "total": 42, "page": 1, "size": 50, "next": null}
            """;

    private final Traces traces;
    private final TraceLimits limits;
    private final Recorder recorder;
    private final ZoneId zone;

    TraceApi(Traces traces, TraceLimits limits, Recorder recorder, ZoneId zone) {
        this.traces = traces;
        this.limits = limits;
        this.recorder = recorder;
        this.zone = zone;
    }

    @Operation(
            summary = "Ask where something went or what is in it",
            description =
                    "Counts are of distinct things per level and class and are never added up across levels."
                            + " Status 409: the root is not recorded, or the cut-off lies ahead; 422: the question is incomplete.")
    @ApiResponse(responseCode = "200", content = @Content(examples = @ExampleObject(JSON_EXAMPLE)))
    @ApiResponse(
            responseCode = "202",
            description = "It is being made still: ask again at Location after Retry-After",
            content = @Content(schema = @Schema(implementation = TraceProgress.class)))
    @ApiResponse(
            responseCode = "503",
            description = "Too much at once, or not made in time: ask again after Retry-After")
    @GetMapping("/api/v1/traces")
    ResponseEntity<?> trace(
            @ParameterObject TraceRequest question,
            @ParameterObject LineChoice choice,
            @Parameter(description = "RFC 7240: respond-async has status 202 if it takes long; wait=10 waits no longer")
                    @RequestHeader(required = false)
                    @Nullable
                    String prefer) {
        Preference preference = Preference.read(prefer);
        Traced traced = traces.within(
                question.question(zone), preference.orElse(limits.pageWait(), limits.longestWait()), caller());
        AnswerHead head = traced.answer();
        return head == null ? later(question, choice, preference, traced.making()) : whole(head, question, choice);
    }

    private ResponseEntity<?> whole(AnswerHead head, TraceRequest question, LineChoice choice) {
        LinePage lines = traces.lines(head.id(), choice.filter(), choice.index(), TraceController.LINES_A_PAGE);
        return ResponseEntity.ok(TraceAnswer.of(head, question, choice, lines));
    }

    private static ResponseEntity<?> later(
            TraceRequest question, LineChoice choice, Preference preference, @Nullable TraceProgress making) {
        if (making == null || !preference.respondsAsync()) {
            throw Traces.notYet();
        }
        return ResponseEntity.accepted()
                .location(URI.create(new TraceAddress(question.knownAt(making.cutoff())).json(choice)))
                .header(HttpHeaders.RETRY_AFTER, String.valueOf(Traces.COME_AGAIN.toSeconds()))
                .header("Preference-Applied", "respond-async")
                .body(making);
    }

    private String caller() {
        return "program of " + recorder.mark();
    }

    @Operation(
            summary = "The lines of an answer as CSV",
            description =
                    "Every line that the filter leaves, not a page. The headers Ledger-Position and Answer-Hash say"
                            + " which answer it is.")
    @ApiResponse(
            responseCode = "200",
            content =
                    @Content(
                            mediaType = "text/csv",
                            schema = @Schema(type = "string"),
                            examples = @ExampleObject(CSV_EXAMPLE)))
    @GetMapping("/api/v1/traces.csv")
    ModelAndView csv(
            @ParameterObject TraceRequest question, @ParameterObject LineChoice choice, HttpServletResponse response) {
        AnswerHead head = traces.ask(question.question(zone));
        response.setHeader("Answer-Hash", head.hash());
        var table = TraceTable.of(traces, head, choice.filter());
        return new ModelAndView(
                "csv", Map.of("cutoff", Objects.requireNonNull(head.question().cutoff()), "tables", List.of(table)));
    }
}
