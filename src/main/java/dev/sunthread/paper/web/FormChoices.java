package dev.sunthread.paper.web;

import dev.sunthread.access.Callers;
import dev.sunthread.access.StationCodes;
import dev.sunthread.paper.FormKind;
import dev.sunthread.paper.Operations;
import dev.sunthread.paper.form.Form;
import dev.sunthread.paper.form.Forms;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

/** What forms can be chosen: the stations, and what may be done at the one that is chosen. */
@Component
class FormChoices {

    private final StationCodes stations;
    private final Operations operations;
    private final Forms forms;
    private final Callers callers;
    private final Clock clock;

    FormChoices(StationCodes stations, Operations operations, Forms forms, Callers callers, Clock clock) {
        this.stations = stations;
        this.operations = operations;
        this.forms = forms;
        this.callers = callers;
        this.clock = clock;
    }

    void show(PrintForm form, Model model) {
        List<String> all = stations.all();
        String asked = form.station() == null ? callers.signedIn().station() : form.station();
        String station = asked != null && all.contains(asked) ? asked : null;
        model.addAttribute("stations", all);
        model.addAttribute("station", station);
        model.addAttribute("operations", station == null ? List.of() : operations.at(station));
        model.addAttribute(
                "kinds",
                Arrays.stream(FormKind.values())
                        .filter(kind -> kind != FormKind.OPERATION)
                        .toList());
    }

    /** The form that is chosen. @throws dev.sunthread.kernel.Refused if there is none such */
    Form form(PrintForm chosen) {
        return forms.of(
                chosen.kind(),
                String.valueOf(chosen.station()),
                chosen.item(),
                chosen.operation(),
                OffsetDateTime.now(clock));
    }
}
