package dev.sunthread.station.web;

import dev.sunthread.access.Caller;
import dev.sunthread.access.Callers;
import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.station.AtWorks;
import dev.sunthread.station.RulePasses;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;

/** A signature at a station by another person than the one who works there, with the badge and PIN of the former. */
@Controller
@Needs(Right.WORK)
class PassController {

    /** What is signed by, as the page sends it; it is kept nowhere. */
    record SignatureForm(
            @Nullable String badge,
            @Nullable String pin,
            @Nullable String why) {

        RulePasses.Signature signature() {
            return new RulePasses.Signature(given(badge), given(pin), given(why));
        }

        private static String given(@Nullable String text) {
            return text == null ? "" : text;
        }
    }

    private final RulePasses passes;
    private final AtWorks atWork;
    private final Callers callers;

    PassController(RulePasses passes, AtWorks atWork, Callers callers) {
        this.passes = passes;
        this.atWork = atWork;
        this.callers = callers;
    }

    @PostMapping("/work/pass")
    String sign(SignatureForm form, @RequestHeader(name = "X-Part", required = false) String part, Model model) {
        Caller caller = callers.signedIn();
        if (caller.station() == null) {
            return "station/no-station";
        }
        passes.sign(caller.station(), caller.mark(), form.signature());
        model.addAttribute("work", atWork.at(caller.station(), caller.mark()));
        return part == null ? "redirect:/work" : "station/bench :: bench";
    }
}
