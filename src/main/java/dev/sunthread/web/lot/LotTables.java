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
                column("At", UsedIn::at),
                column("Level", UsedIn::level),
                column("Item", UsedIn::item),
                column("Serial", UsedIn::serial),
                column("Issuer", UsedIn::issuer),
                column(doing, UsedIn::doing),
                column("Station", UsedIn::station),
                column("Taken out", UsedIn::until));
    }

    static Table<HeldContent> containers(Supplier<List<HeldContent>> containers) {
        return Table.listed(
                "containers",
                containers,
                column("Container", content -> content.state().label()),
                column("On hand", content -> content.balance().onHand()),
                column("Unit", content -> content.balance().unitOfMeasure()),
                column("Opened", content -> content.state().openedAt()),
                column("Where it is", content -> content.state().place()),
                column("Kept", content -> content.state().storage()),
                column(
                        "Out-time (min)",
                        content -> content.state().storage() == null
                                ? null
                                : content.state().outTime().total().toMinutes()),
                column("Ended", content -> content.state().endedAt()),
                column("How it ended", content -> content.state().ending()));
    }

    static Table<Charged> charges(Supplier<List<Charged>> charges) {
        return Table.listed(
                "charges",
                charges,
                column("Station", Charged::station),
                column("Position", Charged::position),
                column("From", Charged::from),
                column("To", Charged::until),
                column("Entry", Charged::entry));
    }
}
