package dev.sunthread.web.station;

import static dev.sunthread.kernel.Table.column;

import dev.sunthread.kernel.Table;
import dev.sunthread.ledger.Sealer;
import dev.sunthread.web.search.UnknownPages;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** The list of stations, and the pages of one station and of one position. */
@Controller
class StationController {

    private final Sealer sealer;
    private final StationContacts contacts;
    private final StationPages stations;
    private final PositionPages positions;
    private final UnknownPages unknown;

    StationController(
            Sealer sealer,
            StationContacts contacts,
            StationPages stations,
            PositionPages positions,
            UnknownPages unknown) {
        this.sealer = sealer;
        this.contacts = contacts;
        this.stations = stations;
        this.positions = positions;
        this.unknown = unknown;
    }

    @GetMapping("/stations")
    ModelAndView stations() {
        long cutoff = sealer.seal();
        List<StationContact> all = contacts.oldestFirst(cutoff);
        Table<StationContact> table = Table.listed(
                "stations",
                () -> all,
                column("column.station", StationContact::station),
                column("column.name", StationContact::name),
                column("column.last-recorded", StationContact::lastAt),
                column("column.what", StationContact::lastTold));
        return new ModelAndView("web/stations", Map.of("cutoff", cutoff, "stations", all, "tables", List.of(table)));
    }

    @GetMapping("/station")
    ModelAndView station(@RequestParam String code, @RequestParam(required = false) @Nullable Integer steps) {
        long cutoff = sealer.seal();
        return stations.find(code)
                .map(station -> new ModelAndView(
                        "web/station",
                        Map.of(
                                "cutoff",
                                cutoff,
                                "page",
                                stations.read(station, code, steps, cutoff),
                                "tables",
                                List.of(stepTable(() -> stations.everyStep(station, cutoff))))))
                .orElseGet(() -> unknown.of("station", code));
    }

    @GetMapping("/position")
    ModelAndView position(
            @RequestParam String station,
            @RequestParam String code,
            @RequestParam(required = false) @Nullable Integer charges,
            @RequestParam(required = false) @Nullable Integer steps) {
        long cutoff = sealer.seal();
        return positions
                .find(station, code)
                .map(position -> new ModelAndView(
                        "web/position",
                        Map.of(
                                "cutoff",
                                cutoff,
                                "page",
                                positions.read(position, station, code, charges, steps, cutoff),
                                "tables",
                                List.of(
                                        chargeTable(() -> positions.everyCharge(position, cutoff)),
                                        stepTable(() -> positions.everyStep(position, cutoff))))))
                .orElseGet(() -> unknown.of("position", code));
    }

    private static Table<PositionPage.Charge> chargeTable(Supplier<List<PositionPage.Charge>> charges) {
        return Table.listed(
                "charges",
                charges,
                column("column.lot", PositionPage.Charge::lot),
                column("column.container", PositionPage.Charge::container),
                column("column.from", PositionPage.Charge::from),
                column("column.to", PositionPage.Charge::until),
                column("column.by", PositionPage.Charge::actor),
                column("column.entry", PositionPage.Charge::entry));
    }

    private static Table<StationPage.Step> stepTable(Supplier<List<StationPage.Step>> steps) {
        return Table.listed(
                "steps",
                steps,
                column("column.from", StationPage.Step::from),
                column("column.to", StationPage.Step::until),
                column("column.operation", StationPage.Step::operation),
                column("column.units", StationPage.Step::units),
                column("column.item-of-first-unit", StationPage.Step::item),
                column("column.serial-of-first-unit", StationPage.Step::serial),
                column("column.lot-scanned", StationPage.Step::lot),
                column("column.by", StationPage.Step::actor),
                column("column.entry", StationPage.Step::entry));
    }
}
