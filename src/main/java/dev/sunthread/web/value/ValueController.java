package dev.sunthread.web.value;

import static dev.sunthread.kernel.Table.column;

import dev.sunthread.kernel.Table;
import dev.sunthread.ledger.Sealer;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** The pages of process values. */
@Controller
class ValueController {

    private final Sealer sealer;
    private final ValuePages pages;

    ValueController(Sealer sealer, ValuePages pages) {
        this.sealer = sealer;
        this.pages = pages;
    }

    @GetMapping("/values")
    ModelAndView values() {
        long cutoff = sealer.seal();
        return new ModelAndView("web/values", Map.of("cutoff", cutoff, "known", pages.known(cutoff)));
    }

    @GetMapping("/value")
    ModelAndView value(
            @RequestParam String operation,
            @RequestParam String name,
            @RequestParam(required = false) @Nullable Integer readings) {
        long cutoff = sealer.seal();
        Table<ValuePage.Reading> all = Table.listed(
                "readings",
                () -> pages.readings(operation, name, cutoff, 0, Integer.MAX_VALUE),
                column("column.at", ValuePage.Reading::at),
                column("column.station", ValuePage.Reading::station),
                column("column.value", ValuePage.Reading::value),
                column("column.unit-of-measure", ValuePage.Reading::unit),
                column("column.units", ValuePage.Reading::units),
                column("column.entry", ValuePage.Reading::entry));
        return new ModelAndView(
                "web/value",
                Map.of(
                        "cutoff",
                        cutoff,
                        "page",
                        pages.read(operation, name, readings, cutoff),
                        "tables",
                        List.of(all)));
    }
}
