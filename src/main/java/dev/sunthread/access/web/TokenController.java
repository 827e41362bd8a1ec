package dev.sunthread.access.web;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.access.machine.Devices;
import dev.sunthread.access.machine.Tokens;
import dev.sunthread.kernel.Refused;
import java.time.ZoneId;
import java.util.Arrays;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The machines that may call, and the devices at stations. */
@Controller
class TokenController {

    private final Tokens tokens;
    private final Devices devices;
    private final StationChoice stations;
    private final ZoneId zone;

    TokenController(Tokens tokens, Devices devices, StationChoice stations, ZoneId zone) {
        this.tokens = tokens;
        this.devices = devices;
        this.stations = stations;
        this.zone = zone;
    }

    @GetMapping("/tokens")
    @Needs(Right.SEE_ACCESS)
    String tokens(Model model) {
        return list(TokenForm.empty(), model);
    }

    @PostMapping("/tokens")
    @Needs(Right.ADMINISTER)
    String make(@ModelAttribute("form") TokenForm form, Model model, RedirectAttributes told) {
        try {
            var said = form.words(zone);
            stations.exists(said.station());
            told.addFlashAttribute("secret", tokens.make(said));
            told.addFlashAttribute("secretOf", said.mark());
            return "redirect:/tokens";
        } catch (Refused e) {
            model.addAttribute("refused", e);
            return list(form, model);
        }
    }

    @PostMapping("/tokens/revoked")
    @Needs(Right.ADMINISTER)
    String revoke(@RequestParam long id) {
        tokens.revoke(id);
        return "redirect:/tokens";
    }

    @PostMapping("/devices/revoked")
    @Needs(Right.ADMINISTER)
    String revokeDevice(@RequestParam long id) {
        devices.revoke(id);
        return "redirect:/tokens";
    }

    private String list(TokenForm form, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("tokens", tokens.all());
        model.addAttribute("devices", devices.all());
        model.addAttribute("stations", stations.all());
        model.addAttribute(
                "rights",
                Arrays.stream(Right.values()).filter(Right::isForMachines).toList());
        return "access/tokens";
    }
}
