package dev.sunthread.web.judging;

import static dev.sunthread.kernel.Table.column;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.catalog.judging.JudgedAgain;
import dev.sunthread.catalog.judging.JudgingAgain;
import dev.sunthread.kernel.Refused;
import dev.sunthread.kernel.Table;
import dev.sunthread.ledger.Sealer;
import dev.sunthread.web.Paged;
import dev.sunthread.web.language.Interpreter;
import jakarta.servlet.http.HttpServletResponse;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** The pages on which runs are judged again. */
@Controller
class JudgingController {

    private static final int A_PAGE = 100;
    private static final int EVERYTHING = 10_000_000;

    private final JudgedKinds kinds;
    private final Sealer sealer;
    private final Interpreter interpreter;
    private final ZoneId zone;

    JudgingController(JudgedKinds kinds, Sealer sealer, Interpreter interpreter, ZoneId zone) {
        this.interpreter = interpreter;
        this.kinds = kinds;
        this.sealer = sealer;
        this.zone = zone;
    }

    @GetMapping("/judgings")
    ModelAndView judgings() {
        return asked(Map.of());
    }

    private ModelAndView asked(Map<String, ?> more) {
        ModelAndView page = new ModelAndView("web/judgings", more);
        page.addObject("cures", listed(JudgedKinds.CURE));
        page.addObject("tests", listed(JudgedKinds.TEST));
        return page;
    }

    private List<JudgingPage.Listed> listed(String kind) {
        return kinds.of(kind).all().stream().map(JudgingPage.Listed::of).toList();
    }

    @PostMapping("/judgings")
    @Needs(Right.WORK)
    ModelAndView begin(@ModelAttribute JudgingRequest request) {
        try {
            long job = kinds.of(request.kind()).begin(request.question(zone), sealer.seal());
            return new ModelAndView("redirect:/judging?of=" + request.kind() + "&id=" + job);
        } catch (Refused e) {
            return asked(Map.of("refused", e, "asked", request));
        }
    }

    @GetMapping("/judging")
    ModelAndView judging(
            @RequestParam String of,
            @RequestParam long id,
            @RequestParam(required = false) @Nullable String before,
            @RequestParam(required = false) @Nullable String after,
            @RequestParam(required = false) @Nullable Integer lines,
            HttpServletResponse response) {
        JudgingAgain<?> kind = kinds.of(of);
        JudgedAgain job = kind.find(id)
                .orElseThrow(() -> new Refused(
                        "There is nothing judged again under number " + id, "What is kept is listed; ask again"));
        if (job.isRunning()) {
            // the page has no script; the browser asks again by itself
            response.setHeader("Refresh", "2");
        }
        Paged<JudgedAgain.Line> shown = Paged.of(
                lines,
                A_PAGE,
                kind.count(id, before, after),
                (offset, most) -> kind.lines(id, before, after, offset, most));
        List<JudgedAgain.Change> changes = kind.changes(id);
        List<JudgingPage.Traced> traced = changes.stream()
                .map(JudgedAgain.Change::after)
                .distinct()
                .map(outcome -> new JudgingPage.Traced(outcome, JudgingScope.of(of, job, outcome)))
                .toList();
        return new ModelAndView(
                "web/judging",
                Map.of(
                        "page",
                        new JudgingPage(of, job, JudgingWords.of(job), changes, traced, shown, before, after),
                        "cutoff",
                        job.cutoff(),
                        "tables",
                        List.of(table(kind, id, before, after))));
    }

    private Table<?> table(JudgingAgain<?> kind, long id, @Nullable String before, @Nullable String after) {
        return Table.listed(
                "lines",
                () -> kind.lines(id, before, after, 0, EVERYTHING),
                column("column.run", JudgedAgain.Line::run),
                column("column.unit", JudgedAgain.Line::unit),
                column("column.equipment", JudgedAgain.Line::equipment),
                column("column.at", JudgedAgain.Line::at),
                column("column.before", JudgedAgain.Line::before),
                column("column.after", JudgedAgain.Line::after),
                column("column.why-before", line -> interpreter.say(line.whyBefore())),
                column("column.why-after", line -> interpreter.say(line.whyAfter())));
    }
}
