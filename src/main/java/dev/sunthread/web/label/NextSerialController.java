package dev.sunthread.web.label;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.kernel.Refused;
import dev.sunthread.kernel.UnitId;
import dev.sunthread.scan.IssuedSerials;
import dev.sunthread.scan.label.Label;
import dev.sunthread.scan.label.LabelSheets;
import dev.sunthread.scan.label.LabelSizes;
import dev.sunthread.scan.label.Symbology;
import jakarta.validation.Valid;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Labels of serials that come next: given out once, printed as often as needed. */
@Controller
class NextSerialController {

    private final NextSerials next;
    private final IssuedSerials issued;
    private final Labels labels;
    private final LabelSizes sizes;

    NextSerialController(NextSerials next, IssuedSerials issued, Labels labels, LabelSizes sizes) {
        this.next = next;
        this.issued = issued;
        this.labels = labels;
        this.sizes = sizes;
    }

    @GetMapping("/labels/next")
    String ask(Model model) {
        model.addAttribute("form", new NextSerialsForm("page-" + UUID.randomUUID(), "", 24));
        return show(model);
    }

    @PostMapping("/labels/next")
    @Needs(Right.WORK)
    String issue(@Valid @ModelAttribute("form") NextSerialsForm form, BindingResult problems, Model model) {
        if (!problems.hasErrors()) {
            try {
                next.issue(form);
                return "redirect:/labels/issued?id=" + form.id();
            } catch (Refused e) {
                model.addAttribute("refused", e);
            }
        }
        return show(model);
    }

    private String show(Model model) {
        model.addAttribute("firsts", next.firsts());
        return "web/label-next";
    }

    @GetMapping("/labels/issued")
    String issued(@RequestParam String id, Model model) {
        model.addAttribute("id", id);
        model.addAttribute("batch", batch(id));
        model.addAttribute("sizes", sizes.sizes());
        model.addAttribute("codes", Symbology.values());
        return "web/label-issued";
    }

    @GetMapping("/labels/issued.pdf")
    ResponseEntity<byte[]> sheet(
            @RequestParam String id,
            @RequestParam(required = false) @Nullable String size,
            @RequestParam(defaultValue = "data-matrix") Symbology code,
            @RequestParam(defaultValue = "0") int skip) {
        IssuedSerials.Batch batch = batch(id);
        List<Label> all = batch.serials().stream()
                .map(serial -> labels.unit(UnitId.of(null, batch.item(), serial)))
                .toList();
        return LabelController.pdf(LabelSheets.pdf(all, sizes.named(size), code, skip));
    }

    private IssuedSerials.Batch batch(String id) {
        return issued.batch(id)
                .orElseThrow(() -> new Refused(
                        "No serials were given out under \"" + id + "\", or it was voided",
                        "Ask for the next serials again"));
    }
}
