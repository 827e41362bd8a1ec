package dev.sunthread.web.run;

import dev.sunthread.kernel.Table;
import dev.sunthread.ledger.Sealer;
import dev.sunthread.web.search.UnknownPages;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** The pages of runs. */
@Controller
class RunController {

    private final Sealer sealer;
    private final CureRunPages cures;
    private final TestRunPages tests;
    private final UnknownPages unknown;

    RunController(Sealer sealer, CureRunPages cures, TestRunPages tests, UnknownPages unknown) {
        this.sealer = sealer;
        this.cures = cures;
        this.tests = tests;
        this.unknown = unknown;
    }

    @GetMapping("/cure-run")
    ModelAndView cureRun(@RequestParam String name) {
        long cutoff = sealer.seal();
        return page("cure-run", name, cutoff, cures.read(name, cutoff), RunTables::ofCureRun);
    }

    @GetMapping("/test-run")
    ModelAndView testRun(@RequestParam String name) {
        long cutoff = sealer.seal();
        return page("test-run", name, cutoff, tests.read(name, cutoff), RunTables::ofTestRun);
    }

    private <P> ModelAndView page(
            String what, String name, long cutoff, Optional<P> page, Function<P, List<Table<?>>> tables) {
        return page.map(found -> new ModelAndView(
                        "web/" + what, Map.of("cutoff", cutoff, "page", found, "tables", tables.apply(found))))
                .orElseGet(() -> unknown.of(what.replace('-', ' '), name));
    }
}
