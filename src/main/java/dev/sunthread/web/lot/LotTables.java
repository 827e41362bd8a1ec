package dev.sunthread.web.lot;

import static dev.sunthread.kernel.Table.column;

import dev.sunthread.kernel.Table;
import java.util.List;
import java.util.function.Supplier;

/** What the page of a lot shows, as tables. */
final class LotTables {

    private LotTables() {}

    static Table<UsedIn> usedIn(String name, String doing, Supplier<List<UsedIn>> uses) {
        return Table.listed(
                name,
                uses,
                column("column.at", UsedIn::at),
                column("column.level", UsedIn::level),
                column("column.item", UsedIn::item),
                column("column.serial", UsedIn::serial),
                column("column.issuer", UsedIn::issuer),
                column(doing, UsedIn::doing),
                column("column.station", UsedIn::station),
                column("column.taken-out", UsedIn::until));
    }

    static Table<HeldContent> containers(Supplier<List<HeldContent>> containers) {
        return Table.listed(
                "containers",
                containers,
                column("column.container", content -> content.state().label()),
                column("column.on-hand", content -> content.balance().onHand()),
                column("column.unit-of-measure", content -> content.balance().unitOfMeasure()),
                column("column.opened", content -> content.state().openedAt()),
                column("column.where", content -> content.state().place()),
                column("column.kept-at", content -> content.state().storage()),
                column(
                        "column.out-time-minutes",
                        content -> content.state().storage() == null
                                ? null
                                : content.state().outTime().total().toMinutes()),
                column("column.ended", content -> content.state().endedAt()),
                column("column.how-ended", content -> content.state().ending()));
    }

    static Table<Charged> charges(Supplier<List<Charged>> charges) {
        return Table.listed(
                "charges",
                charges,
                column("column.station", Charged::station),
                column("column.position", Charged::position),
                column("column.from", Charged::from),
                column("column.to", Charged::until),
                column("column.entry", Charged::entry));
    }
}
