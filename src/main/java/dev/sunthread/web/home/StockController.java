package dev.sunthread.web.home;

import static dev.sunthread.kernel.Table.column;

import dev.sunthread.kernel.Table;
import dev.sunthread.ledger.Sealer;
import dev.sunthread.web.Paged;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The lists behind counts of the start page: what expires, lots that wait for release, units in process. */
@Controller
class StockController {

    private static final int A_PAGE = 100;

    private final Sealer sealer;
    private final ExpiringThings expiring;
    private final WaitingLots waiting;
    private final UnitsInProcess units;

    StockController(Sealer sealer, ExpiringThings expiring, WaitingLots waiting, UnitsInProcess units) {
        this.sealer = sealer;
        this.expiring = expiring;
        this.waiting = waiting;
        this.units = units;
    }

    @GetMapping("/expiring")
    String expiring(@RequestParam(required = false) @Nullable Integer page, Model model) {
        long cutoff = sealer.seal();
        List<ExpiringThing> all = expiring.at(cutoff);
        model.addAttribute("cutoff", cutoff);
        model.addAttribute("things", Paged.of(page, A_PAGE, all));
        model.addAttribute(
                "tables",
                List.of(Table.listed(
                        "expiring",
                        () -> all,
                        column("Lot", ExpiringThing::lot),
                        column("Container", ExpiringThing::container),
                        column("Item", ExpiringThing::item),
                        column("Expires", ExpiringThing::expiresAt),
                        column("State", ExpiringThing::state),
                        column("Opened", ExpiringThing::openedAt),
                        column("On hand", ExpiringThing::onHand),
                        column("Unit", ExpiringThing::unitOfMeasure))));
        return "web/expiring";
    }

    @GetMapping("/waiting")
    String waiting(@RequestParam(required = false) @Nullable Integer page, Model model) {
        long cutoff = sealer.seal();
        model.addAttribute("cutoff", cutoff);
        model.addAttribute("lots", waiting.list(page, cutoff));
        model.addAttribute(
                "tables",
                List.of(Table.listed(
                        "waiting",
                        () -> waiting.all(cutoff),
                        column("Lot", WaitingLot::lot),
                        column("Item", WaitingLot::item),
                        column("Received", WaitingLot::receivedAt),
                        column("Quantity", WaitingLot::quantity),
                        column("Unit", WaitingLot::unitOfMeasure),
                        column("Supplier", WaitingLot::supplier),
                        column("Supplier lots", WaitingLot::supplierLots))));
        return "web/waiting";
    }

    @GetMapping("/in-process")
    String inProcess(
            @RequestParam(required = false) @Nullable String level,
            @RequestParam(required = false) @Nullable Integer page,
            Model model) {
        long cutoff = sealer.seal();
        model.addAttribute("cutoff", cutoff);
        model.addAttribute("level", level);
        model.addAttribute("levels", units.levels(cutoff));
        model.addAttribute("units", units.list(level, page, cutoff));
        model.addAttribute(
                "tables",
                List.of(Table.listed(
                        "in-process",
                        () -> units.all(level, cutoff),
                        column("Level", UnitInProcess::level),
                        column("Item", UnitInProcess::item),
                        column("Serial", UnitInProcess::serial),
                        column("Issuer", UnitInProcess::issuer))));
        return "web/in-process";
    }
}
