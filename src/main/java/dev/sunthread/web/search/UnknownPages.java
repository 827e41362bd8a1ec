package dev.sunthread.web.search;

import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.ModelAndView;

/** Says that nothing is called so and offers what is called nearly so. */
@Component
public class UnknownPages {

    private final NamedThings things;

    UnknownPages(NamedThings things) {
        this.things = things;
    }

    /** The page for a name of something that no record names, such as {@code carrier TRAY-1}. */
    public ModelAndView of(String what, String name) {
        SearchPage named = things.search(name);
        return new ModelAndView(
                "web/unknown",
                Map.of("what", what, "name", name, "near", named.exact().isEmpty() ? named.near() : named.exact()),
                HttpStatus.NOT_FOUND);
    }
}
