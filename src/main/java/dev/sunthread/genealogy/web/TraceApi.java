package dev.sunthread.genealogy.web;

import dev.sunthread.genealogy.AnswerHead;
import dev.sunthread.genealogy.LinePage;
import dev.sunthread.genealogy.Traces;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.ExampleObject;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletResponse;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.springdoc.core.annotations.ParameterObject;
import org.springframework.web.bind.annotation.GetMapping;
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
    private final ZoneId zone;

    TraceApi(Traces traces, ZoneId zone) {
        this.traces = traces;
        this.zone = zone;
    }

    @Operation(
            summary = "Ask where something went or what is in it",
            description =
                    "Counts are of distinct things per level and class and are never added up across levels."
                            + " Status 409: the root is not recorded, or the cut-off lies ahead; 422: the question is incomplete.")
    @ApiResponse(responseCode = "200", content = @Content(examples = @ExampleObject(JSON_EXAMPLE)))
    @GetMapping("/api/v1/traces")
    TraceAnswer trace(@ParameterObject TraceRequest question, @ParameterObject LineChoice choice) {
        AnswerHead head = traces.ask(question.question(zone));
        LinePage lines = traces.lines(head.id(), choice.filter(), choice.index(), TraceController.LINES_A_PAGE);
        return TraceAnswer.of(head, question, choice, lines);
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
