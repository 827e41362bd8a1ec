package dev.sunthread.paper.web;

import dev.sunthread.paper.Sheet;
import dev.sunthread.paper.form.Form;
import dev.sunthread.paper.sheet.SheetPdf;
import dev.sunthread.paper.sheet.SheetText;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;

/** Puts a sheet into the words of who prints it. */
@Component
class PrintedForm {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm");

    private final PaperWords words;
    private final ZoneId zone;
    private final Clock clock;

    PrintedForm(PaperWords words, ZoneId zone, Clock clock) {
        this.words = words;
        this.zone = zone;
        this.clock = clock;
    }

    byte[] of(Sheet sheet, Form form) {
        String what = words.of(sheet.form(), sheet.item(), sheet.operation());
        List<String> lines = List.of(
                words.of(
                        "paper.print.where",
                        sheet.station(),
                        sheet.code(),
                        TIME.format(sheet.printedAt().atZoneSameInstant(zone)),
                        sheet.printedBy()),
                words.of("paper.print.fill"),
                words.of("paper.print.enter"));
        return SheetPdf.of(new SheetText(
                form.name() == null ? what : form.name() + " – " + what,
                lines,
                cautions(form),
                boxes(form),
                sheet.records()));
    }

    private List<String> cautions(Form form) {
        List<String> cautions = new ArrayList<>();
        form.cautions().forEach(caution -> cautions.add(words.of("work.caution." + caution)));
        if (!cautions.isEmpty()) {
            cautions.add(words.of("work.caution.rules"));
        }
        return cautions;
    }

    private List<String> boxes(Form form) {
        Stream<String> times = form.kind().takesTime()
                ? Stream.of("paper.print.date", "paper.print.start", "paper.print.end")
                : Stream.of("paper.print.date", "paper.print.time");
        return Stream.of(
                        form.boxes().stream().map(words::of),
                        times.map(words::of),
                        Stream.of(
                                words.of(
                                        "paper.print.offset",
                                        offset(OffsetDateTime.now(clock.withZone(zone))
                                                .getOffset())),
                                words.of("paper.print.person"),
                                words.of("paper.print.signature")))
                .flatMap(all -> all)
                .toList();
    }

    /** An offset as people write it. */
    static String offset(ZoneOffset offset) {
        return offset.equals(ZoneOffset.UTC) ? "+00:00" : offset.getId();
    }
}
