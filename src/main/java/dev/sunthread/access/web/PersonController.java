package dev.sunthread.access.web;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.access.Words;
import dev.sunthread.access.people.Credentials;
import dev.sunthread.access.people.People;
import dev.sunthread.kernel.Refused;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** What an administrator does to one person: password, PIN, badge, keeping out, forgetting. */
@Controller
@RequestMapping("/person")
@Needs(Right.ADMINISTER)
class PersonController {

    private final People people;
    private final Credentials credentials;
    private final Words words;

    PersonController(People people, Credentials credentials, Words words) {
        this.people = people;
        this.credentials = credentials;
        this.words = words;
    }

    @PostMapping("/password")
    String newPassword(@RequestParam String mark, RedirectAttributes told) {
        return done(mark, told, () -> told.addFlashAttribute("password", credentials.oneTimePassword(mark)));
    }

    @PostMapping("/pin")
    String setPin(@RequestParam String mark, @RequestParam String pin, RedirectAttributes told) {
        return done(mark, told, () -> {
            credentials.setPin(mark, pin);
            told.addFlashAttribute("done", words.of("done.pin"));
        });
    }

    @PostMapping("/badge")
    String giveBadge(@RequestParam String mark, @RequestParam String badge, RedirectAttributes told) {
        return done(mark, told, () -> {
            credentials.giveBadge(mark, badge.strip());
            told.addFlashAttribute("done", words.of("done.badge"));
        });
    }

    @PostMapping("/badge/taken")
    String takeBadge(@RequestParam String mark, RedirectAttributes told) {
        return done(mark, told, () -> credentials.takeBadge(mark));
    }

    @PostMapping("/blocked")
    String block(@RequestParam String mark, @RequestParam boolean blocked, RedirectAttributes told) {
        return done(mark, told, () -> people.setBlocked(mark, blocked));
    }

    @PostMapping("/blanked")
    String blank(@RequestParam String mark, @RequestParam String repeated, RedirectAttributes told) {
        return done(mark, told, () -> {
            if (!repeated.strip().equals(mark)) {
                throw words.refused("blank-repeated", mark);
            }
            people.blank(mark);
        });
    }

    private static String done(String mark, RedirectAttributes told, Runnable deed) {
        try {
            deed.run();
        } catch (Refused e) {
            told.addFlashAttribute("refused", e);
        }
        told.addAttribute("mark", mark);
        return "redirect:/person";
    }
}
