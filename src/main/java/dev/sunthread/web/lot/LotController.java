package dev.sunthread.web.lot;

import dev.sunthread.inbox.typed.TypedLabels;
import dev.sunthread.ledger.Sealer;
import dev.sunthread.materials.Lots;
import dev.sunthread.web.search.NamedThings;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** The page of one lot. */
@Controller
class LotController {

    private final Sealer sealer;
    private final Lots lots;
    private final LotPages pages;
    private final NamedThings things;
    private final TypedLabels typed;

    LotController(Sealer sealer, Lots lots, LotPages pages, NamedThings things, TypedLabels typed) {
        this.sealer = sealer;
        this.lots = lots;
        this.pages = pages;
        this.things = things;
        this.typed = typed;
    }

    @GetMapping("/lot")
    ModelAndView lot(@RequestParam String number, LotView view) {
        long cutoff = sealer.seal();
        return lots.find(number)
                .map(lot -> new ModelAndView(
                        "web/lot",
                        Map.of(
                                "cutoff",
                                cutoff,
                                "page",
                                pages.read(lot, number, view, cutoff),
                                "tables",
                                pages.tables(lot, cutoff),
                                "typed",
                                typed.of(number, cutoff))))
                .orElseGet(() -> unknown(number));
    }

    private ModelAndView unknown(String number) {
        var named = things.search(number);
        var offered = named.exact().isEmpty() ? named.near() : named.exact();
        return new ModelAndView(
                "web/unknown", Map.of("what", "lot", "name", number, "near", offered), HttpStatus.NOT_FOUND);
    }
}
