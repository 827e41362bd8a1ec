package dev.sunthread.web.search;

import static dev.sunthread.kernel.Table.column;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.kernel.Table;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.view.RedirectView;

/** Search by the text of a label, typed or scanned. */
@Controller
class SearchController {

    private final ScanSearch search;

    SearchController(ScanSearch search) {
        this.search = search;
    }

    /** Leads to the one thing that is called so; otherwise lists what the text may mean and chooses nothing. */
    @GetMapping("/search")
    ModelAndView search(@RequestParam(defaultValue = "") String q) {
        SearchPage page = search.search(q);
        if (page.text().isEmpty()) {
            return to("/");
        }
        return page.exact().size() == 1
                ? to(page.exact().get(0).address())
                : new ModelAndView("web/search")
                        .addObject("page", page)
                        .addObject("id", "page-" + UUID.randomUUID())
                        .addObject("tables", List.of(table(page)));
    }

    /** Records which of the things that are called nearly so was meant, and leads there. */
    @PostMapping("/search/choice")
    @Needs(Right.WORK)
    ModelAndView choose(@RequestParam String q, @RequestParam String address, @RequestParam String id) {
        return to(search.choose(q, address, id).address());
    }

    private static Table<Hit> table(SearchPage page) {
        return Table.listed(
                "search",
                () -> Stream.concat(page.exact().stream(), page.near().stream()).toList(),
                column("near.what", Hit::what),
                column("column.name", Hit::name),
                column("near.why", Hit::why));
    }

    private static ModelAndView to(String address) {
        RedirectView view = new RedirectView(address, true);
        view.setExpandUriTemplateVariables(false);
        return new ModelAndView(view);
    }
}
