package dev.sunthread.web.compare;

import dev.sunthread.genealogy.AnswerHead;
import dev.sunthread.web.compare.JoinedAnswer.LevelRow;
import dev.sunthread.web.compare.JoinedAnswer.Line;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springdoc.core.annotations.ParameterObject;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;

/** Joined answers over HTTP, with the parameters of their page. */
@RestController
@Tag(name = "Traces", description = "Where something went, and what is in it")
class JoinedApi {

    /** One of the answers that are joined. */
    record Part(String letter, String question, String hash, String address, List<String> notes) {}

    /**
     * Joined answers as JSON.
     *
     * @param counts of distinct things per level, way of joining and class, never added up across levels
     * @param next the address of the next page of the same
     * @param file the address of all lines as CSV
     */
    record Joined(
            List<Part> parts,
            long cutoff,
            String join,
            List<LevelRow> counts,
            List<Line> lines,
            long total,
            int page,
            int size,
            @Nullable String next,
            String file) {}

    private final Joining joining;

    JoinedApi(Joining joining) {
        this.joining = joining;
    }

    @Operation(
            summary = "Join the answers of several questions",
            description =
                    "A thing in every answer has the weakest of its classes. One that is possible or unproven in an answer"
                            + " is in it: join=open lists what is in the first answer and in others no more than that."
                            + " Status 409: a question names what is not recorded; 422: the questions can't be read.")
    @ApiResponse(responseCode = "200")
    @GetMapping("/api/v1/traces/joined")
    Joined joined(@ParameterObject JoinedRequest asked) {
        List<AnswerHead> heads = joining.ask(asked);
        JoinedAnswer joined = joining.join(asked, heads);
        JoinedAddress address = new JoinedAddress(asked, joined.cutoff());
        return new Joined(
                joined.parts().stream().map(JoinedApi::part).toList(),
                joined.cutoff(),
                address.join(),
                joined.levels(),
                joined.lines().rows(),
                joined.lines().total(),
                joined.lines().page(),
                joined.lines().size(),
                joined.lines().next() == null
                        ? null
                        : address.json().with("page", joined.lines().next()).toString(),
                address.file().toString());
    }

    private static Part part(JoinedAnswer.Part part) {
        return new Part(
                part.letter(),
                part.answer().asked(),
                part.answer().hash(),
                part.answer().address(),
                part.notes());
    }
}
