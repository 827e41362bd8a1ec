package dev.sunthread.web.receipt;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.kernel.Refused;
import jakarta.validation.Valid;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Receives a delivery: scan its label, look, confirm. */
@Controller
@Needs(Right.WORK)
class ReceiptController {

    private final ReceiptPages pages;
    private final Receiving receiving;

    ReceiptController(ReceiptPages pages, Receiving receiving) {
        this.pages = pages;
        this.receiving = receiving;
    }

    @GetMapping("/receipts/new")
    String begin(@RequestParam(required = false) @Nullable String scan, Model model) {
        ReceiptForm empty = ReceiptForm.empty();
        return show(scan == null || scan.isBlank() ? empty : empty.scanned(scan), model);
    }

    /** Reads one more label, or takes a reading of one; records nothing. */
    @PostMapping("/receipts/new")
    String read(
            @ModelAttribute("form") ReceiptForm form,
            @RequestParam(defaultValue = "") String scan,
            @RequestParam(required = false) @Nullable String take,
            Model model) {
        ReceiptForm read = scan.isEmpty() ? form : form.scanned(scan);
        if (take != null && take.matches("\\d{1,4}[.]\\d{1,4}")) {
            String[] label = take.split("[.]");
            read = read.took(Integer.parseInt(label[0]), Integer.parseInt(label[1]));
        }
        return show(read, model);
    }

    @PostMapping("/receipts")
    String receive(
            @Valid @ModelAttribute("form") ReceiptForm form,
            BindingResult problems,
            Model model,
            RedirectAttributes told) {
        if (!problems.hasErrors()) {
            try {
                receiving.receive(form);
                told.addAttribute("number", ReceiptForm.stripped(form.lot()));
                return "redirect:/lot";
            } catch (Refused e) {
                model.addAttribute("refused", e);
            }
        }
        return show(form, model);
    }

    private String show(ReceiptForm form, Model model) {
        ReceiptPage page = pages.fill(form);
        model.addAttribute("page", page);
        return "web/receipt";
    }
}
