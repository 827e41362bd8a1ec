package dev.sunthread.web.carrier;

import dev.sunthread.ledger.Sealer;
import dev.sunthread.web.search.UnknownPages;
import java.util.Map;
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
    ModelAndView carrier(@RequestParam String name) {
        long cutoff = sealer.seal();
        return pages.find(name)
                .map(carrier -> new ModelAndView(
                        "web/carrier", Map.of("cutoff", cutoff, "page", pages.read(carrier, name, cutoff))))
                .orElseGet(() -> unknown.of("carrier", name));
    }
}
