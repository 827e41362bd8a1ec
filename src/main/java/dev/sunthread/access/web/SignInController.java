package dev.sunthread.access.web;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.access.people.DemoPeople;
import dev.sunthread.access.signin.StationDevice;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The forms that one signs in by: name and password, or badge and then PIN at a device of a station. */
@Controller
@Needs(Right.SIGN_IN)
class SignInController {

    private static final Set<String> REFUSED = Set.of("wrong", "later");

    private final StationDevice device;
    private final ObjectProvider<DemoPeople> demo;

    SignInController(StationDevice device, ObjectProvider<DemoPeople> demo) {
        this.device = device;
        this.demo = demo;
    }

    /** What a sign-in form was told: where to go on to, and what was wrong before. */
    record Told(
            @Nullable String to,
            @Nullable String told,
            @Nullable Long seconds) {}

    @ModelAttribute
    void beside(Told told, HttpServletRequest request, Model model) {
        model.addAttribute("asked", told);
        model.addAttribute("station", device.station(request).orElse(null));
        model.addAttribute("demo", demo.getIfAvailable());
    }

    /** At a device of a station badge and PIN are asked for, unless somebody says otherwise or was refused here. */
    @GetMapping("/sign-in")
    String byPassword(
            Told told,
            @RequestParam(required = false) @Nullable String by,
            HttpServletRequest request,
            RedirectAttributes page) {
        boolean isMeant = by != null || REFUSED.contains(String.valueOf(told.told()));
        if (isMeant || device.station(request).isEmpty()) {
            return "access/sign-in";
        }
        page.addAttribute("to", told.to());
        page.addAttribute("told", told.told());
        return "redirect:/badge";
    }

    @GetMapping("/badge")
    String byBadge() {
        return "access/badge";
    }

    /** A badge was scanned, which ends with the Enter key; now the PIN is typed. */
    @PostMapping("/badge")
    String scanned(@RequestParam String badge, Model model) {
        model.addAttribute("badge", badge.strip());
        return "access/badge";
    }
}
