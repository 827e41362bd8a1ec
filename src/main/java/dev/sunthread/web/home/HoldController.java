package dev.sunthread.web.home;

import static dev.sunthread.kernel.Table.column;

import dev.sunthread.kernel.Table;
import dev.sunthread.ledger.Sealer;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The list of open holds, the newest first; {@code of} leaves those of lots, containers or units. */
@Controller
class HoldController {

    private final Sealer sealer;
    private final HoldLists lists;

    HoldController(Sealer sealer, HoldLists lists) {
        this.sealer = sealer;
        this.lists = lists;
    }

    @GetMapping("/holds")
    String holds(
            @RequestParam(required = false) @Nullable String of,
            @RequestParam(required = false) @Nullable Integer page,
            Model model) {
        long cutoff = sealer.seal();
        model.addAttribute("cutoff", cutoff);
        model.addAttribute("of", of);
        model.addAttribute("kinds", lists.things(cutoff));
        model.addAttribute("holds", lists.open(of, page, cutoff));
        model.addAttribute("tables", List.of(table(of, cutoff)));
        return "web/holds";
    }

    private Table<HeldThing> table(@Nullable String of, long cutoff) {
        return Table.listed(
                "holds",
                () -> lists.all(of, cutoff),
                column("column.lot", HeldThing::lot),
                column("column.container", HeldThing::container),
                column("column.item-of-unit", HeldThing::item),
                column("column.serial", HeldThing::serial),
                column("column.issuer", HeldThing::issuer),
                column("column.reason", HeldThing::reason),
                column("column.since", HeldThing::since),
                column("column.placed-by", HeldThing::entry),
                column("column.number-there", HeldThing::ordinal));
    }
}
