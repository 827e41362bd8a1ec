package dev.sunthread.genealogy.web;

import dev.sunthread.genealogy.AnswerHead;
import dev.sunthread.genealogy.TraceFlows;
import dev.sunthread.genealogy.Traces;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.ZoneId;
import org.springdoc.core.annotations.ParameterObject;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** The flow of an answer over HTTP, with the parameters of the trace page. */
@RestController
@Tag(name = "Traces")
class FlowApi {

    private final Traces traces;
    private final TraceFlows flows;
    private final ZoneId zone;

    FlowApi(Traces traces, TraceFlows flows, ZoneId zone) {
        this.traces = traces;
        this.flows = flows;
        this.zone = zone;
    }

    @Operation(
            summary = "How an answer flows through levels and where it is",
            description =
                    "Aggregated by level, class and place; counts are of distinct things. A link goes in the direction"
                            + " of time; the last column is where the outermost units were seen last.")
    @GetMapping("/api/v1/traces/flow")
    FlowPicture flow(@ParameterObject TraceRequest question) {
        AnswerHead head = traces.ask(question.question(zone));
        return FlowPicture.of(head, flows.of(head), TraceAddress.of(head, question));
    }
}
