package dev.sunthread.paper.web;

import dev.sunthread.paper.PrintedSheets;
import dev.sunthread.paper.RecordId;
import dev.sunthread.paper.Sheet;
import dev.sunthread.paper.form.Form;
import dev.sunthread.paper.form.Forms;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

/** Gathers the pages of records on paper. */
@Component
class RecordPages {

    private static final int MOST = 200;

    /** What a record asks for, and when it was printed; long ago if nobody knows. */
    record Asked(Form form, OffsetDateTime printedAt) {}

    private final PrintedSheets printed;
    private final Forms forms;
    private final FormChoices choices;
    private final ZoneId zone;
    private final Clock clock;

    RecordPages(PrintedSheets printed, Forms forms, FormChoices choices, ZoneId zone, Clock clock) {
        this.printed = printed;
        this.forms = forms;
        this.choices = choices;
        this.zone = zone;
        this.clock = clock;
    }

    RecordForm empty() {
        return RecordForm.empty(OffsetDateTime.now(clock.withZone(zone)).getOffset());
    }

    /** What the record asks for, by its sheet, or as it is chosen if that is not known. */
    Asked form(RecordId id, PrintForm chosen) {
        return sheet(id)
                .map(sheet -> new Asked(forms.of(sheet), sheet.printedAt()))
                .orElseGet(() -> new Asked(choices.form(chosen), OffsetDateTime.MIN));
    }

    private Optional<Sheet> sheet(RecordId id) {
        return printed.sheet(id.sheet()).filter(sheet -> sheet.records().contains(id.text()));
    }

    String show(RecordId id, PrintForm chosen, RecordForm typed, boolean again, Model model) {
        boolean isKnown = sheet(id).isPresent();
        model.addAttribute("id", id.text());
        model.addAttribute("record", printed.record(id));
        model.addAttribute("known", isKnown);
        model.addAttribute("typed", typed);
        model.addAttribute("again", again);
        if (isKnown || chosen.isComplete()) {
            model.addAttribute("asked", form(id, chosen).form());
        } else {
            choices.show(chosen, model);
        }
        return "paper/record";
    }

    /** The page of a record that was entered just now. */
    String done(RecordId id, Model model) {
        model.addAttribute("id", id.text());
        model.addAttribute("record", printed.record(id));
        return "paper/entered";
    }

    /** The page of what was printed. */
    String list(Model model) {
        model.addAttribute("sheets", printed.counted(MOST));
        model.addAttribute("open", printed.open());
        return "paper/forms";
    }
}
