package dev.sunthread.web;

import dev.sunthread.holds.Holds;
import dev.sunthread.ledger.Sealer;
import java.util.List;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** The list of open holds, the newest first. */
@Controller
class HoldController {

    private static final int MOST = 500;

    private final Sealer sealer;
    private final JdbcClient jdbc;

    HoldController(Sealer sealer, JdbcClient jdbc) {
        this.sealer = sealer;
        this.jdbc = jdbc;
    }

    @GetMapping("/holds")
    String holds(Model model) {
        long cutoff = sealer.seal();
        model.addAttribute("cutoff", cutoff);
        model.addAttribute("holds", open(cutoff));
        return "web/holds";
    }

    private List<HeldThing> open(long cutoff) {
        return jdbc.sql("""
                        SELECT h.entry, h.ordinal, h.reason, h.since, l.number AS lot, i.number AS item, u.serial, u.issuer
                        FROM (%s) h
                        LEFT JOIN materials.lot l ON h.kind = 'LOT' AND l.id = h.subject
                        LEFT JOIN production.unit u ON h.kind = 'UNIT' AND u.id = h.subject
                        LEFT JOIN catalog.item i ON i.id = u.item
                        ORDER BY h.since DESC, h.entry, h.ordinal LIMIT :most
                        """.formatted(Holds.KNOWN))
                .param("cutoff", cutoff)
                .param("most", MOST)
                .query(DataClassRowMapper.newInstance(HeldThing.class))
                .list();
    }
}
