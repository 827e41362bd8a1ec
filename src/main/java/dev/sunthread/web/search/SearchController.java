package dev.sunthread.web.search;

import static dev.sunthread.kernel.Table.column;

import dev.sunthread.kernel.Table;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.view.RedirectView;

/** Search by the text of a label. */
@Controller
class SearchController {

    private final NamedThings things;

    SearchController(NamedThings things) {
        this.things = things;
    }

    /** Leads to the one thing that is called so; otherwise lists what the text may mean and chooses nothing. */
    @GetMapping("/search")
    ModelAndView search(@RequestParam(defaultValue = "") String q) {
        String text = q.strip();
        if (text.isEmpty()) {
            return to("/");
        }
        SearchPage page = things.search(text);
        return page.exact().size() == 1
                ? to(page.exact().get(0).address())
                : new ModelAndView("web/search", Map.of("page", page, "tables", List.of(table(page))));
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
