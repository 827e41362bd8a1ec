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
                column("column.occurred", Told::at),
                column("column.what", Told::said),
                column("column.item", Told::item),
                column("column.serial", Told::serial),
                column("column.issuer", Told::issuer),
                column("column.lot", Told::lot),
                column("column.other", Told::name),
                column("column.station", Told::station),
                column("column.by", Told::actor),
                column("column.from-source", Told::source),
                column("column.entry", Told::entry),
                column("column.recorded", Told::recordedAt),
                column("column.voided-by", Told::voidedBy),
                column("column.voided-why", Told::voidedWhy));
    }

    static Table<UsedLot> uses(Supplier<List<UsedLot>> uses) {
        return Table.listed(
                "material",
                uses,
                column("column.step-ended", UsedLot::at),
                column("column.operation", UsedLot::operation),
                column("column.station", UsedLot::station),
                column("column.item", UsedLot::item),
                column("column.lot-scanned", UsedLot::lot),
                column("column.position", UsedLot::position),
                column("column.lots-loaded", UsedLot::loaded),
                column("column.quantity", UsedLot::quantity),
                column("column.unit-of-measure", UsedLot::unitOfMeasure));
    }

    static Table<Map.Entry<String, Inside>> built(Supplier<AsBuilt> built) {
        return Table.listed(
                "built",
                () -> AsBuiltViews.paths(built.get().parts()),
                column("column.position", Map.Entry::getKey),
                column("column.level", part -> part.getValue().level()),
                column("column.unit", part -> part.getValue().unit()),
                column("column.lot", part -> part.getValue().lot()),
                column("column.from", part -> part.getValue().from()),
                column("column.to", part -> part.getValue().until()),
                column("column.expected", part -> part.getValue().expected()));
    }
}
