package dev.sunthread.access.web;

import static dev.sunthread.kernel.Table.column;

import dev.sunthread.access.AccessLog;
import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.kernel.Table;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The access log, the newest lines first. */
@Controller
class AccessLogController {

    private static final int A_PAGE = 100;

    private final AccessLog log;

    AccessLogController(AccessLog log) {
        this.log = log;
    }

    /** A part of the log. */
    public record Part(List<AccessLog.Line> lines, long total, long page) {

        public boolean hasOlder() {
            return page * A_PAGE < total;
        }
    }

    @GetMapping("/access-log")
    @Needs(Right.SEE_ACCESS)
    String log(@RequestParam(defaultValue = "1") long page, Model model) {
        long shown = Math.max(1, page);
        model.addAttribute("part", new Part(log.latest((shown - 1) * A_PAGE, A_PAGE), log.count(), shown));
        model.addAttribute("tables", List.of(table()));
        return "access/log";
    }

    private Table<AccessLog.Line> table() {
        return Table.listed(
                "access-log",
                () -> log.latest(0, Integer.MAX_VALUE),
                column("Number", AccessLog.Line::number),
                column("At", AccessLog.Line::at),
                column("What", AccessLog.Line::word),
                column("By", AccessLog.Line::actor),
                column("About", AccessLog.Line::about),
                column("More", AccessLog.Line::detail));
    }
}
