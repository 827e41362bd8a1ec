package dev.sunthread.web.language;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.web.servlet.LocaleResolver;
import org.springframework.web.servlet.i18n.AcceptHeaderLocaleResolver;
import org.springframework.web.servlet.i18n.CookieLocaleResolver;

/**
 * The languages that pages are written in: the one a person chose, kept in a cookie; else the first that the browser asks
 * for and that there is; else English, whatever the machine's own is.
 */
@Configuration
class Languages {

    static final List<Locale> ALL = List.of(Locale.ENGLISH, Locale.GERMAN);

    private static final String COOKIE = "language";
    private static final Duration KEPT = Duration.ofDays(365);

    @Bean
    LocaleResolver localeResolver() {
        AcceptHeaderLocaleResolver asked = new AcceptHeaderLocaleResolver();
        asked.setSupportedLocales(ALL);
        asked.setDefaultLocale(Locale.ENGLISH);
        CookieLocaleResolver chosen = new CookieLocaleResolver(COOKIE);
        chosen.setCookieMaxAge(KEPT);
        chosen.setCookieHttpOnly(true);
        chosen.setCookieSameSite("Strict");
        chosen.setRejectInvalidCookies(false);
        chosen.setDefaultLocaleFunction(asked::resolveLocale);
        return chosen;
    }
}
