package dev.sunthread.access.signin;

import dev.sunthread.access.Callers;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpSession;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Component;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.context.request.ServletRequestAttributes;

/**
 * Keeps what was typed into a form whose sign-in had ended, so that it stands in the form again once somebody signed in;
 * nothing is sent again by itself. Kept is what comes from a page of this application, never a secret, never a file.
 */
@Component("keptForms")
public class KeptForms {

    /** In characters; more is shown at once and not kept, because anybody may send it. */
    private static final int MOST = 64 * 1024;

    private static final String KEPT = "kept form";
    private static final Set<String> SECRETS = Set.of("secret", "password", "old", "again", "pin", "badge");

    private final Callers callers;

    KeptForms(Callers callers) {
        this.callers = callers;
    }

    /** Keeps what a request sent and gives the page that its form stands on; empty if it is not kept. */
    public Optional<String> keep(HttpServletRequest request) {
        String page = request.getMethod().equals("POST") && request.getHeader("X-Part") == null ? page(request) : null;
        if (page == null) {
            return Optional.empty();
        }
        Object ended = request.getAttribute(SessionCallers.ENDED);
        var kept =
                new KeptForm(page, request.getRequestURI(), ended instanceof String mark ? mark : null, typed(request));
        if (kept.length() > MOST) {
            return Optional.empty();
        }
        request.getSession().setAttribute(KEPT, kept);
        return Optional.of(page);
    }

    /** The fields of a form as they were typed, without its token and without secrets. */
    public static List<KeptForm.Typed> typed(HttpServletRequest request) {
        List<KeptForm.Typed> typed = new ArrayList<>();
        request.getParameterMap().forEach((name, values) -> {
            if (!name.startsWith("_") && !SECRETS.contains(name)) {
                for (String value : values) {
                    typed.add(new KeptForm.Typed(name, value));
                }
            }
        });
        return typed;
    }

    /** What was typed on the page that is being shown to who is signed in; given once. */
    public @Nullable KeptForm here() {
        String mark = callers.mark();
        return mark == null || !(RequestContextHolder.getRequestAttributes() instanceof ServletRequestAttributes asked)
                ? null
                : here(asked.getRequest(), mark);
    }

    private static @Nullable KeptForm here(HttpServletRequest request, String mark) {
        HttpSession session = request.getSession(false);
        if (session == null || !(session.getAttribute(KEPT) instanceof KeptForm kept)) {
            return null;
        }
        boolean isSomebodyElses = kept.mark() != null && !kept.mark().equals(mark);
        if (!isSomebodyElses && !kept.page().equals(address(request))) {
            return null;
        }
        session.removeAttribute(KEPT);
        return isSomebodyElses ? null : kept;
    }

    private static String address(HttpServletRequest request) {
        String query = request.getQueryString();
        return request.getRequestURI() + (query == null ? "" : "?" + query);
    }

    /** The page of this application that a request was sent from, as its browser says. */
    private static @Nullable String page(HttpServletRequest request) {
        String site = request.getHeader("Sec-Fetch-Site");
        String from = request.getHeader(HttpHeaders.REFERER);
        if (from == null || site != null && !site.equals("same-origin")) {
            return null;
        }
        try {
            URI page = new URI(from);
            String query = page.getRawQuery();
            return request.getServerName().equalsIgnoreCase(page.getHost())
                    ? SignInAnswers.ownPage(page.getRawPath() + (query == null ? "" : "?" + query))
                    : null;
        } catch (URISyntaxException e) {
            return null;
        }
    }
}
