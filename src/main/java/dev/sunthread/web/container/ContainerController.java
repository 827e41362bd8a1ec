package dev.sunthread.web.container;

import dev.sunthread.ledger.Sealer;
import dev.sunthread.materials.Containers;
import dev.sunthread.web.search.NamedThings;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** The page of one container. */
@Controller
class ContainerController {

    private final Sealer sealer;
    private final Containers containers;
    private final ContainerPages pages;
    private final NamedThings things;

    ContainerController(Sealer sealer, Containers containers, ContainerPages pages, NamedThings things) {
        this.sealer = sealer;
        this.containers = containers;
        this.pages = pages;
        this.things = things;
    }

    @GetMapping("/container")
    ModelAndView container(@RequestParam String label, @RequestParam(required = false) @Nullable Integer happenings) {
        long cutoff = sealer.seal();
        return containers
                .find(label)
                .map(container -> new ModelAndView(
                        "web/container",
                        Map.of(
                                "cutoff",
                                cutoff,
                                "page",
                                pages.read(container, happenings, cutoff),
                                "tables",
                                pages.tables(container, cutoff))))
                .orElseGet(() -> unknown(label));
    }

    private ModelAndView unknown(String label) {
        var named = things.search(label);
        var offered = named.exact().isEmpty() ? named.near() : named.exact();
        return new ModelAndView(
                "web/unknown", Map.of("what", "container", "name", label, "near", offered), HttpStatus.NOT_FOUND);
    }
}
