package dev.sunthread.web.home;

import dev.sunthread.ledger.Sealer;
import dev.sunthread.paper.PrintedSheets;
import dev.sunthread.quality.StationsBehind;
import dev.sunthread.station.Stops;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** The start page: search, what waits, what happened last, and how to begin. */
@Controller
class StartController {

    private final Sealer sealer;
    private final StartPages pages;
    private final Stops stops;
    private final StationsBehind behind;
    private final PrintedSheets paper;

    StartController(Sealer sealer, StartPages pages, Stops stops, StationsBehind behind, PrintedSheets paper) {
        this.stops = stops;
        this.behind = behind;
        this.paper = paper;
        this.sealer = sealer;
        this.pages = pages;
    }

    @GetMapping("/")
    String start(Model model) {
        long cutoff = sealer.seal();
        model.addAttribute("cutoff", cutoff);
        model.addAttribute("page", pages.read(cutoff));
        model.addAttribute("stops", stops.unconfirmed());
        model.addAttribute("behind", behind.at(cutoff));
        model.addAttribute("paper", paper.open());
        return "web/start";
    }
}
