package dev.sunthread.access.web;

import dev.sunthread.access.Callers;
import dev.sunthread.access.Needs;
import dev.sunthread.access.Qualifications;
import dev.sunthread.access.Right;
import dev.sunthread.access.Words;
import dev.sunthread.access.people.Credentials;
import dev.sunthread.access.people.People;
import dev.sunthread.kernel.Refused;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** One's own account: who one is here, what one may do, and one's password and PIN. */
@Controller
@Needs(Right.OWN_ACCOUNT)
class AccountController {

    private final Callers callers;
    private final People people;
    private final Credentials credentials;
    private final Qualifications qualifications;
    private final Words words;

    AccountController(
            Callers callers, People people, Credentials credentials, Qualifications qualifications, Words words) {
        this.callers = callers;
        this.people = people;
        this.credentials = credentials;
        this.qualifications = qualifications;
        this.words = words;
    }

    @GetMapping("/account")
    String account(Model model) {
        var caller = callers.signedIn();
        model.addAttribute("caller", caller);
        model.addAttribute("person", people.find(caller.mark()).orElse(null));
        model.addAttribute("qualifications", qualifications.of(caller.mark()));
        return "access/account";
    }

    @PostMapping("/account/password")
    String changePassword(
            @RequestParam String old,
            @RequestParam String password,
            @RequestParam String again,
            RedirectAttributes told) {
        try {
            if (!password.equals(again)) {
                throw words.refused("password-again");
            }
            credentials.changePassword(callers.signedIn().mark(), old, password);
        } catch (Refused e) {
            told.addFlashAttribute("refused", e);
            return "redirect:/account";
        }
        // the change ended the session: whoever else knew the old password is out too
        return "redirect:/sign-in?told=changed";
    }

    @PostMapping("/account/pin")
    String changePin(@RequestParam String pin, RedirectAttributes told) {
        try {
            credentials.setPin(callers.signedIn().mark(), pin);
        } catch (Refused e) {
            told.addFlashAttribute("refused", e);
            return "redirect:/account";
        }
        return "redirect:/sign-in?told=changed";
    }
}
