package dev.sunthread.web.unit;

import dev.sunthread.inbox.typed.TypedLabels;
import dev.sunthread.kernel.UnitId;
import dev.sunthread.ledger.Sealer;
import dev.sunthread.production.Units;
import dev.sunthread.web.search.NamedThings;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** The page of one unit. */
@Controller
class UnitController {

    private final Sealer sealer;
    private final Units units;
    private final UnitPages pages;
    private final NamedThings things;
    private final TypedLabels typed;

    UnitController(Sealer sealer, Units units, UnitPages pages, NamedThings things, TypedLabels typed) {
        this.sealer = sealer;
        this.units = units;
        this.pages = pages;
        this.things = things;
        this.typed = typed;
    }

    @GetMapping("/unit")
    ModelAndView unit(
            @RequestParam String item,
            @RequestParam String serial,
            @RequestParam(required = false) @Nullable String issuer,
            UnitView view) {
        long cutoff = sealer.seal();
        UnitId id = UnitId.of(issuer == null || issuer.isBlank() ? null : issuer, item, serial);
        return units.find(id)
                .map(unit -> new ModelAndView(
                        "web/unit",
                        Map.of(
                                "cutoff",
                                cutoff,
                                "page",
                                pages.read(unit, id, view, cutoff),
                                "tables",
                                pages.tables(unit, id, view, cutoff),
                                "typed",
                                typed.of(id.serial(), cutoff))))
                .orElseGet(() -> unknown(id));
    }

    private ModelAndView unknown(UnitId id) {
        var named = things.search(id.serial());
        var offered = named.exact().isEmpty() ? named.near() : named.exact();
        return new ModelAndView(
                "web/unknown", Map.of("what", "unit", "name", id, "near", offered), HttpStatus.NOT_FOUND);
    }
}
