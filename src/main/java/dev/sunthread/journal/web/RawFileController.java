package dev.sunthread.journal.web;

import dev.sunthread.access.Callers;
import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.journal.Sender;
import dev.sunthread.journal.raw.RawFiles;
import dev.sunthread.journal.raw.RawKind;
import dev.sunthread.journal.raw.RawReport;
import dev.sunthread.kernel.Refused;
import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseBody;
import org.springframework.web.multipart.MultipartFile;

/** Files of rigs and loggers over the page, many at once, and over HTTP, each with its report. */
@Controller
@Tag(name = "Raw files", description = "Sweeps and profiles as CSV or JSON")
class RawFileController {

    private final RawFiles files;
    private final Callers callers;

    RawFileController(RawFiles files, Callers callers) {
        this.files = files;
        this.callers = callers;
    }

    @GetMapping("/journal/raw")
    String page() {
        return "journal/raw";
    }

    @PostMapping("/journal/raw")
    @Needs(Right.WORK)
    String takeIn(RawUpload upload, Model model) throws IOException {
        List<RawReport> reports = new ArrayList<>();
        try {
            for (MultipartFile file : upload.given()) {
                String name = file.getOriginalFilename();
                reports.add(files.take(
                        kind(String.valueOf(upload.kind())), file.getBytes(), upload.mapping(), sender(name)));
            }
        } catch (Refused e) {
            model.addAttribute("refused", e);
        }
        model.addAttribute("reports", reports);
        model.addAttribute("mapping", upload.mapping());
        model.addAttribute("kind", upload.kind());
        return "journal/raw";
    }

    @Operation(
            summary = "Take a file of raw data in",
            description =
                    "CSV with a row to each point or reading, or JSON with an object to each run. The mapping says"
                            + " a line to each field: \"volts: U [V]\" for a column, \"specification = WAL-IV\" for one value.")
    @PostMapping(
            path = "/api/v1/raw-files",
            consumes = MediaType.ALL_VALUE,
            produces = MediaType.APPLICATION_JSON_VALUE)
    @ResponseBody
    RawReport takeIn(
            @RequestBody byte[] file,
            @RequestParam String kind,
            @RequestParam(required = false) @Nullable String mapping,
            @RequestParam(defaultValue = "unnamed") String name)
            throws IOException {
        return files.take(kind(kind), file, mapping, sender(name));
    }

    /** What a file of raw data says is said by who hands it in. */
    private Sender sender(@Nullable String file) {
        return new Sender(callers.signedIn().mark(), file == null ? "unnamed" : file, true);
    }

    private static RawKind kind(String word) {
        return Stream.of(RawKind.values())
                .filter(kind -> kind.envelope().equals(word.toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new Refused("There are no raw data of kind " + word, "Say test-run or cure-run"));
    }
}
