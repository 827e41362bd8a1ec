package dev.sunthread.web.label;

import dev.sunthread.kernel.Refused;
import dev.sunthread.scan.label.Label;
import dev.sunthread.scan.label.LabelSheets;
import dev.sunthread.scan.label.LabelSize;
import dev.sunthread.scan.label.LabelSizes;
import dev.sunthread.scan.label.LabelSvg;
import dev.sunthread.scan.label.Symbology;
import dev.sunthread.station.label.Command;
import dev.sunthread.web.PageAddress;
import jakarta.validation.Valid;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;

/** Labels of what is recorded. */
@Controller
class LabelController {

    /** Words that a station understands as commands. */
    private static final List<String> COMMANDS = Stream.concat(
                    Arrays.stream(Command.values()).map(Command::word), Stream.of("damaged"))
            .toList();

    private final Labels labels;
    private final LabelSizes sizes;

    LabelController(Labels labels, LabelSizes sizes) {
        this.labels = labels;
        this.sizes = sizes;
    }

    /** Shows the label as it will be printed, and offers other sizes and codes. */
    @GetMapping("/labels")
    String label(
            @Valid @ModelAttribute("asked") LabelRequest asked,
            @ModelAttribute("self") PageAddress self,
            Locale locale,
            Model model) {
        LabelSize size = sizes.named(asked.size());
        model.addAttribute("size", size);
        model.addAttribute("sizes", sizes.sizes());
        model.addAttribute("codes", Symbology.values());
        model.addAttribute("svg", new PageAddress("/labels/label.svg", self.parameters()));
        try {
            LabelSvg.of(labels.of(asked, locale), size, asked.symbology());
        } catch (Refused e) {
            model.addAttribute("refused", e);
        }
        return "web/label";
    }

    @GetMapping("/labels/label.svg")
    ResponseEntity<String> svg(@Valid @ModelAttribute("asked") LabelRequest asked, Locale locale) {
        String svg = LabelSvg.of(labels.of(asked, locale), sizes.named(asked.size()), asked.symbology());
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType("image/svg+xml;charset=UTF-8"))
                .body(svg);
    }

    @GetMapping("/labels/sheet.pdf")
    ResponseEntity<byte[]> sheet(@Valid @ModelAttribute("asked") LabelRequest asked, Locale locale) {
        List<Label> copies = Collections.nCopies(asked.howMany(), labels.of(asked, locale));
        return pdf(LabelSheets.pdf(copies, sizes.named(asked.size()), asked.symbology(), asked.skipped()));
    }

    @GetMapping("/labels/commands")
    String commands(Model model) {
        model.addAttribute("commands", COMMANDS);
        return "web/label-commands";
    }

    static ResponseEntity<byte[]> pdf(byte[] document) {
        return ResponseEntity.ok().contentType(MediaType.APPLICATION_PDF).body(document);
    }
}
