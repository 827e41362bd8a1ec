package dev.sunthread.access.web;

import static dev.sunthread.kernel.Table.column;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Qualifications;
import dev.sunthread.access.Right;
import dev.sunthread.access.Role;
import dev.sunthread.access.people.People;
import dev.sunthread.access.people.Person;
import dev.sunthread.kernel.Refused;
import dev.sunthread.kernel.Table;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Everybody who can sign in, and who each of them is. */
@Controller
class PeopleController {

    private final People people;
    private final Qualifications qualifications;

    PeopleController(People people, Qualifications qualifications) {
        this.people = people;
        this.qualifications = qualifications;
    }

    @GetMapping("/people")
    @Needs(Right.SEE_ACCESS)
    String people(Model model) {
        return list(PersonForm.empty(), model);
    }

    @PostMapping("/people")
    @Needs(Right.ADMINISTER)
    String add(@ModelAttribute("form") PersonForm form, Model model, RedirectAttributes to) {
        try {
            to.addAttribute("mark", people.add(form.words()).mark());
            return "redirect:/person";
        } catch (Refused e) {
            model.addAttribute("refused", e);
            return list(form, model);
        }
    }

    @GetMapping("/person")
    @Needs(Right.SEE_ACCESS)
    String person(@RequestParam String mark, Model model) {
        Person person = people.marked(mark);
        return show(person, new PersonForm(person.mark(), person.name(), person.signIn(), person.roles()), model);
    }

    @PostMapping("/person")
    @Needs(Right.ADMINISTER)
    String describe(@ModelAttribute("form") PersonForm form, Model model, RedirectAttributes to) {
        Person person = people.marked(form.words().mark());
        try {
            people.describe(form.words());
            to.addAttribute("mark", person.mark());
            return "redirect:/person";
        } catch (Refused e) {
            model.addAttribute("refused", e);
            return show(person, form, model);
        }
    }

    private String list(PersonForm form, Model model) {
        List<Person> all = people.all();
        model.addAttribute("form", form);
        model.addAttribute("people", all);
        model.addAttribute("roles", Role.values());
        model.addAttribute("tables", List.of(table(all)));
        return "access/people";
    }

    private String show(Person person, PersonForm form, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("person", person);
        model.addAttribute("roles", Role.values());
        model.addAttribute("qualifications", qualifications.of(person.mark()));
        return "access/person";
    }

    private static Table<Person> table(List<Person> all) {
        return Table.listed(
                "people",
                () -> all,
                column("Mark", Person::mark),
                column("Name", Person::name),
                column("Sign-in name", Person::signIn),
                column(
                        "Roles",
                        person -> person.roles().stream().map(Role::word).toList()),
                column("Badge ends in", Person::badgeEnding),
                column("Blocked", Person::blocked));
    }
}
