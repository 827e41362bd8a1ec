package dev.sunthread.web.equipment;

import static dev.sunthread.kernel.Table.column;

import dev.sunthread.kernel.Table;
import java.util.List;
import java.util.function.Supplier;

/** What the page of equipment shows, as tables. */
final class EquipmentTables {

    private EquipmentTables() {}

    static List<Table<?>> of(EquipmentPage page, Supplier<List<EquipmentPage.Run>> everyRun) {
        return List.of(
                Table.listed(
                        "runs",
                        everyRun,
                        column("column.from", EquipmentPage.Run::from),
                        column("column.to", EquipmentPage.Run::until),
                        column("column.run", EquipmentPage.Run::what),
                        column("column.number", EquipmentPage.Run::number),
                        column("column.recipe-or-specification", EquipmentPage.Run::under),
                        column("column.verdict-by-raw", EquipmentPage.Run::verdict)),
                Table.listed(
                        "checks",
                        page::checks,
                        column("column.at", EquipmentPage.Check::at),
                        column("column.check", EquipmentPage.Check::way),
                        column("column.found", EquipmentPage.Check::verdict),
                        column("column.specification", EquipmentPage.Check::specification),
                        column("column.evidence", EquipmentPage.Check::evidence),
                        column("column.errors", EquipmentPage.Check::errors),
                        column("column.radiometer", EquipmentPage.Check::radiometer),
                        column("column.accepted-no-more", EquipmentPage.Check::lost),
                        column("column.entry", EquipmentPage.Check::entry)));
    }
}
