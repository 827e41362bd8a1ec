package dev.sunthread.web.compare;

import static dev.sunthread.kernel.Table.column;

import dev.sunthread.kernel.Refused;
import dev.sunthread.kernel.Table;
import dev.sunthread.kernel.UnitId;
import dev.sunthread.ledger.Sealer;
import dev.sunthread.production.Units;
import dev.sunthread.web.compare.UnitComparison.LotRow;
import dev.sunthread.web.compare.UnitComparison.Part;
import dev.sunthread.web.compare.UnitComparison.PositionRow;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;

/** Two units side by side. */
@Controller
class UnitCompareController {

    private final Sealer sealer;
    private final Units units;
    private final UnitComparisons comparisons;

    UnitCompareController(Sealer sealer, Units units, UnitComparisons comparisons) {
        this.sealer = sealer;
        this.units = units;
        this.comparisons = comparisons;
    }

    @GetMapping("/compare/units")
    String units(@ModelAttribute("pair") UnitPair pair, Model model) {
        if (pair.isComplete()) {
            try {
                compare(pair, model);
            } catch (Refused e) {
                model.addAttribute("refused", e);
            }
        }
        return "web/compare-units";
    }

    private void compare(UnitPair pair, Model model) {
        long cutoff = sealer.seal();
        UnitComparison whole =
                comparisons.of(pair.left(), known(pair.left()), pair.right(), known(pair.right()), cutoff);
        UnitComparison comparison = Boolean.TRUE.equals(pair.differing()) ? whole.differing() : whole;
        model.addAttribute("cutoff", cutoff);
        model.addAttribute("comparison", comparison);
        model.addAttribute("tables", List.of(positions(comparison), lots(comparison)));
    }

    private long known(UnitId id) {
        return units.find(id)
                .orElseThrow(() -> new Refused(
                        "No unit " + id + " is recorded", "Correct its item and serial; case and leading zeros count"));
    }

    private static Table<PositionRow> positions(UnitComparison comparison) {
        return Table.listed(
                "positions",
                comparison::positions,
                column("column.position", PositionRow::path),
                column("column.left", row -> words(row.left())),
                column("column.right", row -> words(row.right())),
                column("column.difference", row -> row.verdict().words()));
    }

    private static Table<LotRow> lots(UnitComparison comparison) {
        return Table.listed(
                "lots",
                comparison::lots,
                column("column.item", LotRow::item),
                column("column.lot", LotRow::lot),
                column("column.units-left", LotRow::left),
                column("column.units-right", LotRow::right),
                column("column.difference", row -> row.verdict().words()));
    }

    private static @Nullable String words(@Nullable Part part) {
        if (part == null) {
            return null;
        }
        return part.unit() == null ? "lot " + part.lot() : part.level() + " " + part.unit();
    }
}
