package dev.sunthread.web.run;

import static dev.sunthread.kernel.Table.column;

import dev.sunthread.kernel.Table;
import java.util.List;

/** What the pages of runs and equipment show, as tables. */
final class RunTables {

    private RunTables() {}

    static List<Table<?>> ofCureRun(CureRunPage page) {
        return List.of(members(page), readings(page), bonds(page));
    }

    private static Table<?> bonds(CureRunPage page) {
        return Table.listed(
                "bonds",
                () -> page.judged().stream()
                        .flatMap(judged -> judged.bonds().stream())
                        .toList(),
                column("column.item", CureRunPage.Bond::item),
                column("column.serial", CureRunPage.Bond::serial),
                column("column.issuer", CureRunPage.Bond::issuer),
                column("column.position", CureRunPage.Bond::position),
                column("column.cures", CureRunPage.Bond::runs),
                column("column.verdict", CureRunPage.Bond::outcome),
                column("column.why", CureRunPage.Bond::sentence));
    }

    private static Table<?> readings(CureRunPage page) {
        return Table.listed(
                "profile",
                () -> page.judged().stream()
                        .flatMap(judged -> judged.profile().readings().stream())
                        .toList(),
                column("column.sensor", CureProfile.Reading::sensor),
                column("column.seconds", CureProfile.Reading::second),
                column("column.reading", CureProfile.Reading::value),
                column("column.unit-of-measure", CureProfile.Reading::unit));
    }

    private static Table<?> members(CureRunPage page) {
        return Table.listed(
                "members",
                page::units,
                column("column.level", CureRunPage.Member::level),
                column("column.item", CureRunPage.Member::item),
                column("column.serial", CureRunPage.Member::serial),
                column("column.issuer", CureRunPage.Member::issuer),
                column("column.on-carrier", CureRunPage.Member::carrier),
                column("column.position", CureRunPage.Member::position));
    }

    static List<Table<?>> ofTestRun(TestRunPage page) {
        return List.of(tests(page), points(page), chain(page));
    }

    private static Table<?> chain(TestRunPage page) {
        return Table.listed(
                "chain",
                () -> page.judged().stream()
                        .flatMap(judged -> judged.chain().stream())
                        .toList(),
                column("column.at", TestRunPage.Result::at),
                column("column.run", TestRunPage.Result::run),
                column("column.equipment", TestRunPage.Result::equipment),
                column("column.told", TestRunPage.Result::told),
                column("column.verdict-by-raw", TestRunPage.Result::outcome),
                column("column.findings", TestRunPage.Result::repeated));
    }

    private static Table<?> points(TestRunPage page) {
        return Table.listed(
                "points",
                () -> page.judged().stream()
                        .flatMap(judged -> judged.curves().stream())
                        .flatMap(curve -> curve.points().stream())
                        .toList(),
                column("column.volts", TestCurve.Point::volts),
                column("column.amperes", TestCurve.Point::amperes),
                column("column.watts", TestCurve.Point::watts));
    }

    private static Table<?> tests(TestRunPage page) {
        return Table.listed(
                "tests",
                page::records,
                column("column.item", TestRunPage.Recorded::item),
                column("column.serial", TestRunPage.Recorded::serial),
                column("column.issuer", TestRunPage.Recorded::issuer),
                column("column.specification", TestRunPage.Recorded::specification),
                column("column.equipment", TestRunPage.Recorded::equipment),
                column("column.from", TestRunPage.Recorded::from),
                column("column.to", TestRunPage.Recorded::until),
                column("column.verdict", TestRunPage.Recorded::verdict),
                column("column.by", TestRunPage.Recorded::actor),
                column("column.entry", TestRunPage.Recorded::entry));
    }
}
