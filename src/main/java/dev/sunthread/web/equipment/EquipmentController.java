package dev.sunthread.web.equipment;

import dev.sunthread.ledger.Sealer;
import dev.sunthread.web.search.UnknownPages;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** The page of the equipment that runs are done with. */
@Controller
class EquipmentController {

    private final Sealer sealer;
    private final EquipmentPages pages;
    private final UnknownPages unknown;

    EquipmentController(Sealer sealer, EquipmentPages pages, UnknownPages unknown) {
        this.sealer = sealer;
        this.pages = pages;
        this.unknown = unknown;
    }

    @GetMapping("/equipment")
    ModelAndView equipment(@RequestParam String name, @RequestParam(required = false) @Nullable Integer runs) {
        long cutoff = sealer.seal();
        return pages.read(name, runs, cutoff)
                .map(page -> new ModelAndView(
                        "web/equipment",
                        Map.of(
                                "cutoff",
                                cutoff,
                                "page",
                                page,
                                "tables",
                                EquipmentTables.of(page, () -> pages.everyRun(name, cutoff)))))
                .orElseGet(() -> unknown.of("equipment", name));
    }
}
