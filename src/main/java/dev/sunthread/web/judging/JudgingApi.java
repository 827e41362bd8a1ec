package dev.sunthread.web.judging;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.catalog.judging.JudgedAgain;
import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.Sealer;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.time.ZoneId;
import java.util.List;
import org.springframework.http.HttpStatus;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;

/** Runs judged again over HTTP: begun, watched, and counted; the lines are those of the page. */
@RestController
@RequestMapping("/api/v1/judgings")
@Tag(name = "Judgings", description = "Raw data judged again under another revision or with a corrected sensor")
class JudgingApi {

    /** A job with how many runs went from which verdict to which. */
    record Progress(JudgedAgain job, List<JudgedAgain.Change> changes, String lines) {}

    private final JudgedKinds kinds;
    private final Sealer sealer;
    private final ZoneId zone;

    JudgingApi(JudgedKinds kinds, Sealer sealer, ZoneId zone) {
        this.kinds = kinds;
        this.sealer = sealer;
        this.zone = zone;
    }

    @Operation(summary = "Begin to judge runs again")
    @PostMapping
    @Needs(Right.WORK)
    @ResponseStatus(HttpStatus.ACCEPTED)
    Progress begin(@RequestBody JudgingRequest request) {
        long job = kinds.of(request.kind()).begin(request.question(zone), sealer.seal());
        return progress(request.kind(), job);
    }

    @Operation(
            summary = "How far a job is and what came out",
            description = "Fetch the lines as CSV at the address given.")
    @GetMapping("/{of}/{id}")
    Progress progress(@PathVariable String of, @PathVariable long id) {
        JudgedAgain job = kinds.of(of)
                .find(id)
                .orElseThrow(() -> new Refused("There is no such job", "Ask again; what is judged is kept for a week"));
        return new Progress(
                job, kinds.of(of).changes(id), "/judging?of=" + of + "&id=" + id + "&table=lines&format=csv");
    }
}
