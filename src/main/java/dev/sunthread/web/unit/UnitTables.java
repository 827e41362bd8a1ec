package dev.sunthread.web.unit;

import static dev.sunthread.kernel.Table.column;

import dev.sunthread.kernel.Table;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** What the pages of units and containers show, as tables. */
public final class UnitTables {

    private UnitTables() {}

    /** Happenings of a thing. */
    public static Table<Told> happenings(String name, Supplier<List<Told>> told) {
        return Table.listed(
                name,
                told,
                column("Occurred", Told::at),
                column("What", Told::said),
                column("Item", Told::item),
                column("Serial", Told::serial),
                column("Issuer", Told::issuer),
                column("Lot", Told::lot),
                column("Other", Told::name),
                column("Station", Told::station),
                column("By", Told::actor),
                column("From", Told::source),
                column("Entry", Told::entry),
                column("Recorded", Told::recordedAt),
                column("Voided by", Told::voidedBy),
                column("Why voided", Told::voidedWhy));
    }

    static Table<UsedLot> uses(Supplier<List<UsedLot>> uses) {
        return Table.listed(
                "material",
                uses,
                column("Step ended", UsedLot::at),
                column("Operation", UsedLot::operation),
                column("Station", UsedLot::station),
                column("Item", UsedLot::item),
                column("Lot scanned", UsedLot::lot),
                column("Position", UsedLot::position),
                column("Lots loaded there then", UsedLot::loaded),
                column("Quantity", UsedLot::quantity),
                column("Unit", UsedLot::unitOfMeasure));
    }

    static Table<Map.Entry<String, Inside>> built(Supplier<AsBuilt> built) {
        return Table.listed(
                "built",
                () -> AsBuiltViews.paths(built.get().parts()),
                column("Position", Map.Entry::getKey),
                column("Level", part -> part.getValue().level()),
                column("Unit", part -> part.getValue().unit()),
                column("Lot", part -> part.getValue().lot()),
                column("From", part -> part.getValue().from()),
                column("To", part -> part.getValue().until()),
                column(
                        "Expected where nothing is recorded",
                        part -> part.getValue().expected()));
    }
}
