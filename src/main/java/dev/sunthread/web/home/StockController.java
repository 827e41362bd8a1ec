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
                        column("column.lot", ExpiringThing::lot),
                        column("column.container", ExpiringThing::container),
                        column("column.item", ExpiringThing::item),
                        column("column.expires", ExpiringThing::expiresAt),
                        column("column.state", ExpiringThing::state),
                        column("column.opened", ExpiringThing::openedAt),
                        column("column.on-hand", ExpiringThing::onHand),
                        column("column.unit-of-measure", ExpiringThing::unitOfMeasure))));
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
                        column("column.lot", WaitingLot::lot),
                        column("column.item", WaitingLot::item),
                        column("column.received", WaitingLot::receivedAt),
                        column("column.quantity", WaitingLot::quantity),
                        column("column.unit-of-measure", WaitingLot::unitOfMeasure),
                        column("column.supplier", WaitingLot::supplier),
                        column("column.supplier-lots", WaitingLot::supplierLots))));
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
                        column("column.level", UnitInProcess::level),
                        column("column.item", UnitInProcess::item),
                        column("column.serial", UnitInProcess::serial),
                        column("column.issuer", UnitInProcess::issuer))));
        return "web/in-process";
    }
}
