package dev.sunthread.web.carrier;

import static dev.sunthread.kernel.Table.column;

import dev.sunthread.kernel.Table;
import dev.sunthread.ledger.Sealer;
import dev.sunthread.web.search.UnknownPages;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** The page of one carrier. */
@Controller
class CarrierController {

    private final Sealer sealer;
    private final CarrierPages pages;
    private final UnknownPages unknown;

    CarrierController(Sealer sealer, CarrierPages pages, UnknownPages unknown) {
        this.sealer = sealer;
        this.pages = pages;
        this.unknown = unknown;
    }

    @GetMapping("/carrier")
    ModelAndView carrier(@RequestParam String name, @RequestParam(required = false) @Nullable Integer loads) {
        long cutoff = sealer.seal();
        return pages.find(name)
                .map(carrier -> new ModelAndView(
                        "web/carrier",
                        Map.of(
                                "cutoff",
                                cutoff,
                                "page",
                                pages.read(carrier, name, loads, cutoff),
                                "tables",
                                List.of(table(carrier, cutoff)))))
                .orElseGet(() -> unknown.of("carrier", name));
    }

    private Table<CarrierPage.Load> table(long carrier, long cutoff) {
        return Table.listed(
                "loads",
                () -> pages.everyLoad(carrier, cutoff),
                column("column.item", CarrierPage.Load::item),
                column("column.serial", CarrierPage.Load::serial),
                column("column.issuer", CarrierPage.Load::issuer),
                column("column.carrier", CarrierPage.Load::carrier),
                column("column.position", CarrierPage.Load::position),
                column("column.from", CarrierPage.Load::from),
                column("column.to", CarrierPage.Load::until),
                column("column.entry", CarrierPage.Load::entry));
    }
}
