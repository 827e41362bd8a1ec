package dev.sunthread.web.run;

import static dev.sunthread.kernel.Table.column;

import dev.sunthread.kernel.Table;
import java.util.List;
import java.util.function.Supplier;

/** What the pages of runs and equipment show, as tables. */
final class RunTables {

    private RunTables() {}

    static List<Table<?>> ofCureRun(CureRunPage page) {
        return List.of(members(page), readings(page));
    }

    private static Table<?> readings(CureRunPage page) {
        return Table.listed(
                "profile",
                () -> page.judged().stream()
                        .flatMap(judged -> judged.profile().readings().stream())
                        .toList(),
                column("Sensor", CureProfile.Reading::sensor),
                column("Seconds", CureProfile.Reading::second),
                column("Reading", CureProfile.Reading::value),
                column("Unit", CureProfile.Reading::unit));
    }

    private static Table<?> members(CureRunPage page) {
        return Table.listed(
                "members",
                page::units,
                column("Level", CureRunPage.Member::level),
                column("Item", CureRunPage.Member::item),
                column("Serial", CureRunPage.Member::serial),
                column("Issuer", CureRunPage.Member::issuer),
                column("On carrier", CureRunPage.Member::carrier),
                column("Position", CureRunPage.Member::position));
    }

    static List<Table<?>> ofTestRun(TestRunPage page) {
        return List.of(tests(page), points(page));
    }

    private static Table<?> points(TestRunPage page) {
        return Table.listed(
                "points",
                () -> page.judged().stream()
                        .flatMap(judged -> judged.curves().stream())
                        .flatMap(curve -> curve.points().stream())
                        .toList(),
                column("Volts", TestCurve.Point::volts),
                column("Amperes", TestCurve.Point::amperes),
                column("Watts", TestCurve.Point::watts));
    }

    private static Table<?> tests(TestRunPage page) {
        return Table.listed(
                "tests",
                page::records,
                column("Item", TestRunPage.Recorded::item),
                column("Serial", TestRunPage.Recorded::serial),
                column("Issuer", TestRunPage.Recorded::issuer),
                column("Specification", TestRunPage.Recorded::specification),
                column("Equipment", TestRunPage.Recorded::equipment),
                column("From", TestRunPage.Recorded::from),
                column("To", TestRunPage.Recorded::until),
                column("Verdict", TestRunPage.Recorded::verdict),
                column("By", TestRunPage.Recorded::actor),
                column("Entry", TestRunPage.Recorded::entry));
    }

    static List<Table<?>> ofEquipment(EquipmentPage page, Supplier<List<EquipmentPage.Run>> everyRun) {
        return List.of(
                Table.listed(
                        "runs",
                        everyRun,
                        column("From", EquipmentPage.Run::from),
                        column("To", EquipmentPage.Run::until),
                        column("Run", EquipmentPage.Run::what),
                        column("Number", EquipmentPage.Run::number),
                        column("Recipe or specification", EquipmentPage.Run::under),
                        column("Verdict by raw data", EquipmentPage.Run::verdict)),
                Table.listed(
                        "checks",
                        page::checks,
                        column("At", EquipmentPage.Check::at),
                        column("Check", EquipmentPage.Check::way),
                        column("Found", EquipmentPage.Check::verdict),
                        column("Specification", EquipmentPage.Check::specification),
                        column("Evidence", EquipmentPage.Check::evidence),
                        column("Errors", EquipmentPage.Check::errors),
                        column("Radiometer", EquipmentPage.Check::radiometer),
                        column("Accepted no more", EquipmentPage.Check::lost),
                        column("Entry", EquipmentPage.Check::entry)));
    }
}
