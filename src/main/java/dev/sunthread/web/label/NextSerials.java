package dev.sunthread.web.label;

import dev.sunthread.access.Callers;
import dev.sunthread.catalog.ItemLabels;
import dev.sunthread.kernel.Refused;
import dev.sunthread.kernel.SerialPattern;
import dev.sunthread.kernel.UnitId;
import dev.sunthread.scan.IssuedSerials;
import dev.sunthread.scan.label.LabelCode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** The serials that come next of an item whose pattern counts: behind the last that was given out or came about. */
@Service
class NextSerials {

    private final ItemLabels labels;
    private final IssuedSerials issued;
    private final Callers callers;
    private final JdbcClient jdbc;

    NextSerials(ItemLabels labels, IssuedSerials issued, Callers callers, JdbcClient jdbc) {
        this.callers = callers;
        this.labels = labels;
        this.issued = issued;
        this.jdbc = jdbc;
    }

    /** Every item whose serials can be counted, with the next of it; none if all of them are used. */
    Map<String, Optional<String>> firsts() {
        Map<String, Optional<String>> firsts = new TreeMap<>();
        labels.latestPatterns().forEach((item, pattern) -> {
            if (pattern.counts()) {
                firsts.put(item, pattern.serial(next(item, pattern)));
            }
        });
        return firsts;
    }

    /**
     * Gives out the next serials and records it.
     *
     * @throws Refused if the item's serials can't be counted or there are no more of them
     */
    void issue(NextSerialsForm form) {
        SerialPattern pattern = labels.latestPatterns().get(form.item());
        if (pattern == null || !pattern.counts()) {
            throw new Refused(
                    "Nothing released says how serials of " + form.item() + " are counted",
                    "Release a revision of the item with a serial pattern such as RC-#####");
        }
        long first = next(form.item(), pattern);
        List<String> serials = LongStream.range(first, first + form.count())
                .mapToObj(number -> pattern.serial(number)
                        .orElseThrow(() -> new Refused(
                                "There are no more serials of " + form.item() + " behind "
                                        + pattern.serial(number - 1).orElse("the last"),
                                "Ask for fewer, or release a revision of the item with a longer pattern")))
                .toList();
        // what can't be printed is not given out
        LabelCode.refuseUnlessReadAlike(LabelCode.unit(UnitId.of(null, form.item(), serials.get(0))));
        issued.issue(form.id(), callers.signedIn().mark(), new IssuedSerials.Batch(form.item(), serials));
    }

    private long next(String item, SerialPattern pattern) {
        return Stream.concat(issued.last(item, pattern).stream(), born(item, pattern).stream())
                        .flatMap(serial -> pattern.number(serial).stream())
                        .mapToLong(Long::longValue)
                        .max()
                        .orElse(0)
                + 1;
    }

    private Optional<String> born(String item, SerialPattern pattern) {
        return jdbc.sql("""
                        SELECT u.serial FROM production.unit u JOIN catalog.item i ON i.id = u.item
                        WHERE i.number = ? AND u.issuer = ? AND u.serial BETWEEN ? AND ? AND u.serial ~ ?
                        ORDER BY u.serial DESC LIMIT 1
                        """)
                .params(item, UnitId.THIS_PLANT)
                .params(pattern.text().replace('#', '0'), pattern.text().replace('#', '9'))
                .param(pattern.expression())
                .query(String.class)
                .optional();
    }
}
