package dev.sunthread.genealogy.web;

import dev.sunthread.genealogy.AnswerHead;
import dev.sunthread.genealogy.LinePage;
import dev.sunthread.genealogy.Traces;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.ExampleObject;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletResponse;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import org.springdoc.core.annotations.ParameterObject;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** Traces over HTTP, with the parameters of the trace page. */
@RestController
@Tag(name = "Traces", description = "Where something went, and what is in it")
class TraceApi {

    private static final String CSV = "text/csv;charset=UTF-8";
    private static final String CSV_EXAMPLE = """
            kind,level,item,name,issuer,ever,now,at_shipment,at,reason,place,holds,shipments,path
            unit,receiver,RCV-10,R000123,plant,certain,certain,,,lot L-0417 was scanned,in the plant,,,step 1 | step 2
            """;
    private static final String JSON_EXAMPLE = """
            {"id": "3f1c", "question": {"way": "FORWARD", "lot": "L-0417"}, "suspects": ["L-0417"], "cutoff": 1200,
             "cutoffRecordedAt": "2026-03-02T10:15:04Z", "hash": "9b0c",
             "counts": [{"when": "EVER", "level": "receiver", "certain": 40, "possible": 2, "unproven": 0}],
             "openFindings": 1, "openLines": 0, "lines": [], "total": 42, "page": 1, "size": 50}
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
        return TraceAnswer.of(head, question, lines);
    }

    @Operation(
            summary = "The lines of an answer as CSV",
            description =
                    "Every line that the filter leaves, not a page. The headers Ledger-Position and Answer-Hash say"
                            + " which answer it is.")
    @ApiResponse(
            responseCode = "200",
            content = @Content(mediaType = "text/csv", examples = @ExampleObject(CSV_EXAMPLE)))
    @GetMapping("/api/v1/traces.csv")
    void csv(@ParameterObject TraceRequest question, @ParameterObject LineChoice choice, HttpServletResponse response)
            throws IOException {
        AnswerHead head = traces.ask(question.question(zone));
        response.setContentType(CSV);
        response.setHeader(
                "Content-Disposition",
                "attachment; filename=\"trace-" + head.hash().substring(0, 8) + ".csv\"");
        response.setHeader("Ledger-Position", String.valueOf(head.question().cutoff()));
        response.setHeader("Answer-Hash", head.hash());
        Writer out = new BufferedWriter(new OutputStreamWriter(response.getOutputStream(), StandardCharsets.UTF_8));
        traces.each(head.id(), choice.filter(), new TraceCsv(out)::line);
        out.flush();
    }
}
