package dev.sunthread.web.language;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Locale;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.LocaleResolver;
import org.springframework.web.servlet.view.RedirectView;

/** Keeps the language that a person chose and leads back to the page. */
@Controller
class LanguageController {

    private final LocaleResolver locales;

    LanguageController(LocaleResolver locales) {
        this.locales = locales;
    }

    @PostMapping("/language")
    @Needs(Right.SIGN_IN)
    RedirectView choose(
            @RequestParam String to,
            @RequestParam(defaultValue = "/") String back,
            HttpServletRequest request,
            HttpServletResponse response) {
        Locale chosen = Locale.forLanguageTag(to);
        if (Languages.ALL.contains(chosen)) {
            locales.setLocale(request, response, chosen);
        }
        RedirectView view = new RedirectView(isOwn(back) ? back : "/", true);
        view.setExpandUriTemplateVariables(false);
        return view;
    }

    // "//host" and "/\host" are addresses of other hosts
    private static boolean isOwn(String back) {
        return back.startsWith("/") && !back.startsWith("//") && back.indexOf('\\') < 0;
    }
}
