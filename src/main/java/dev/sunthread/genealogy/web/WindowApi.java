package dev.sunthread.genealogy.web;

import dev.sunthread.genealogy.ProposedWindow;
import dev.sunthread.genealogy.WindowProposals;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.ExampleObject;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.ZoneId;
import org.springdoc.core.annotations.ParameterObject;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** Proposed windows over HTTP, with the parameters of their page. */
@RestController
@Tag(name = "Traces", description = "Where something went, and what is in it")
class WindowApi {

    private static final String EXAMPLE = """
            {"window": {"from": "2026-03-02T05:59:30Z", "to": null},
             "opened": "The last check that was good is the verification under IV-1",
             "closed": "No check that was good is recorded behind it: it is open still",
             "widened": "Both ends are moved apart by 30 s, by which the least exact clock may be off"}
            """;

    private final WindowProposals windows;
    private final ZoneId zone;

    WindowApi(WindowProposals windows, ZoneId zone) {
        this.windows = windows;
        this.zone = zone;
    }

    @Operation(
            summary = "Ask from when to when something is suspect",
            description = "Status 409: it is not recorded; 422: the question is incomplete.")
    @ApiResponse(responseCode = "200", content = @Content(examples = @ExampleObject(EXAMPLE)))
    @GetMapping("/api/v1/windows")
    ProposedWindow window(@ParameterObject WindowRequest asked) {
        return asked.proposed(windows, zone);
    }
}
