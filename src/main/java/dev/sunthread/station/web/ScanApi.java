package dev.sunthread.station.web;

import dev.sunthread.access.Caller;
import dev.sunthread.access.Callers;
import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.kernel.Refused;
import dev.sunthread.station.Bench;
import dev.sunthread.station.Scan;
import dev.sunthread.station.Verdict;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.ExampleObject;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RestController;

/** Scans of machines: what an operator scans at the page, by a token of the station. */
@RestController
@Tag(name = "Scans", description = "The steps of a station, one call for each scan or many at once")
@Needs(Right.WORK)
class ScanApi {

    private static final String EXAMPLE = """
            [{"id": "solder-1-20261104-0815-001", "text": "RW-1016", "at": "2026-11-04T08:15:00+01:00", "kept": false}]
            """;
    private static final String ANSWER = """
            [{"id": "solder-1-20261104-0815-001", "outcome": "ACCEPTED", "said": "Solder in series is done on RW-1016.",
              "remedy": null, "choices": []}]
            """;

    /** A scan as it is sent; without a time it happened when it came. */
    record Sent(String id, String text, @Nullable OffsetDateTime at, boolean kept) {}

    /** What came of one scan, in the caller's language. */
    record Answered(
            String id,
            Verdict.Outcome outcome,
            String said,
            @Nullable String remedy,
            List<Choice> choices) {}

    record Choice(String text, String said) {}

    private final Bench bench;
    private final Callers callers;
    private final Sentences sentences;
    private final Clock clock;

    ScanApi(Bench bench, Callers callers, Sentences sentences, Clock clock) {
        this.bench = bench;
        this.callers = callers;
        this.sentences = sentences;
        this.clock = clock;
    }

    @Operation(
            summary = "Scan at the station of the token",
            description =
                    "Taken in their order, each in a transaction of its own. The same id again does nothing and gets the"
                            + " same word. A scan that is marked as kept tells what was done already: it is recorded whatever"
                            + " rule it breaks, with a finding, or kept in the inbox.",
            requestBody =
                    @io.swagger.v3.oas.annotations.parameters.RequestBody(
                            content = @Content(examples = @ExampleObject(EXAMPLE))))
    @ApiResponse(responseCode = "200", content = @Content(examples = @ExampleObject(ANSWER)))
    @PostMapping("/api/v1/scans")
    List<Answered> scan(@RequestBody List<Sent> sent) {
        Caller caller = callers.signedIn();
        if (caller.station() == null) {
            throw new Refused(
                    "The caller stands at no station", "Use a token that was made for a station, or a chosen device");
        }
        List<Answered> answers = new ArrayList<>();
        for (Sent one : sent) {
            OffsetDateTime at = one.at() == null ? OffsetDateTime.now(clock) : one.at();
            Scan scan = new Scan(one.id(), one.text(), at, one.kept());
            answers.add(answered(one.id(), bench.scan(caller.station(), caller.mark(), scan)));
        }
        return answers;
    }

    private Answered answered(String id, Verdict verdict) {
        return new Answered(
                id,
                verdict.outcome(),
                sentences.of(verdict.said()),
                verdict.remedy() == null ? null : sentences.of(verdict.remedy()),
                verdict.choices().stream()
                        .map(choice -> new Choice(choice.text(), sentences.of(choice.said())))
                        .toList());
    }
}
