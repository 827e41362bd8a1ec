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
                column("Station", StationContact::station),
                column("Name", StationContact::name),
                column("Last recorded", StationContact::lastAt),
                column("What", StationContact::lastTold));
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
                column("Lot", PositionPage.Charge::lot),
                column("Container", PositionPage.Charge::container),
                column("From", PositionPage.Charge::from),
                column("To", PositionPage.Charge::until),
                column("By", PositionPage.Charge::actor),
                column("Entry", PositionPage.Charge::entry));
    }

    private static Table<StationPage.Step> stepTable(Supplier<List<StationPage.Step>> steps) {
        return Table.listed(
                "steps",
                steps,
                column("From", StationPage.Step::from),
                column("To", StationPage.Step::until),
                column("Operation", StationPage.Step::operation),
                column("Units", StationPage.Step::units),
                column("Item of first unit", StationPage.Step::item),
                column("Serial of first unit", StationPage.Step::serial),
                column("Scanned lot", StationPage.Step::lot),
                column("By", StationPage.Step::actor),
                column("Entry", StationPage.Step::entry));
    }
}
