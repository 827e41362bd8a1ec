package dev.sunthread.web.compare;

import static dev.sunthread.kernel.Table.column;

import dev.sunthread.kernel.Refused;
import dev.sunthread.kernel.Table;
import dev.sunthread.web.compare.AnswerDifference.Line;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;

/** Two answers of traces side by side: what joined, what left, and what changed its class. */
@Controller
class AnswerCompareController {

    private final AnswerDifferences differences;

    AnswerCompareController(AnswerDifferences differences) {
        this.differences = differences;
    }

    @GetMapping("/compare/answers")
    String answers(@ModelAttribute("pair") AnswerPair pair, Model model) {
        model.addAttribute("kept", differences.kept());
        if (pair.isComplete()) {
            try {
                compare(pair.shown(), model);
            } catch (Refused e) {
                model.addAttribute("refused", e);
            }
        }
        return "web/compare-answers";
    }

    private void compare(AnswerPair pair, Model model) {
        KeptAnswer left = differences.named(String.valueOf(pair.left()));
        KeptAnswer right = differences.named(String.valueOf(pair.right()));
        model.addAttribute("difference", differences.between(left, right, pair));
        model.addAttribute(
                "tables",
                List.of(Table.listed(
                        "difference",
                        () -> differences.lines(left, right, pair, 0, Integer.MAX_VALUE),
                        column("column.difference", Line::difference),
                        column("column.level", Line::level),
                        column("column.item", Line::item),
                        column("column.name", Line::name),
                        column("column.issuer", Line::issuer),
                        column("column.class-left", Line::before),
                        column("column.class-right", Line::after),
                        column("column.reason", Line::reason))));
    }
}
