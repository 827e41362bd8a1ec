package dev.sunthread.station.web;

import dev.sunthread.access.Caller;
import dev.sunthread.access.Callers;
import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.kernel.Refused;
import dev.sunthread.station.DamagedLabels;
import dev.sunthread.station.label.Resembling;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** A label that can't be read: one field at a time, each ended by Enter, for keys and scanner alone. */
@Controller
@Needs(Right.WORK)
class DamagedLabelController {

    private final DamagedLabels labels;
    private final Resembling resembling;
    private final Callers callers;

    DamagedLabelController(DamagedLabels labels, Resembling resembling, Callers callers) {
        this.labels = labels;
        this.resembling = resembling;
        this.callers = callers;
    }

    /** Begins anew, whatever was typed before. */
    @GetMapping("/work/damaged")
    String begin(Model model) {
        Caller caller = callers.signedIn();
        if (caller.station() == null) {
            return "station/no-station";
        }
        labels.forget(caller.station(), caller.mark());
        return show(caller.station(), caller, model);
    }

    /**
     * Takes what comes next: what the label says, another person's badge and then PIN, and what that person reads.
     *
     * @param badge the badge, once it was scanned
     */
    @PostMapping("/work/damaged")
    String said(@RequestParam String said, @RequestParam(required = false) @Nullable String badge, Model model) {
        Caller caller = callers.signedIn();
        if (caller.station() == null) {
            return "station/no-station";
        }
        try {
            take(caller.station(), caller, said, badge, model);
        } catch (Refused e) {
            model.addAttribute("refused", e);
        }
        return show(caller.station(), caller, model);
    }

    private void take(String station, Caller caller, String said, @Nullable String badge, Model model) {
        switch (labels.stage(station, caller.mark())) {
            case FIRST -> labels.first(station, caller.mark(), said);
            case OTHER -> {
                if (badge == null) {
                    model.addAttribute("badge", said.strip());
                } else {
                    labels.other(station, caller.mark(), badge, said);
                }
            }
            case AGAIN ->
                labels.again(station, caller.mark(), said)
                        .ifPresentOrElse(both -> confirmed(both, model), () -> model.addAttribute("differs", true));
        }
    }

    private void confirmed(DamagedLabels.Confirmed both, Model model) {
        model.addAttribute("confirmed", both);
        model.addAttribute("alike", resembling.to(both.text()));
    }

    private String show(String station, Caller caller, Model model) {
        model.addAttribute("station", station);
        model.addAttribute("typist", caller.mark());
        model.addAttribute("stage", labels.stage(station, caller.mark()));
        return "station/damaged";
    }
}
