package dev.sunthread.access.signin;

import dev.sunthread.access.AccessLog;
import dev.sunthread.access.AccessLog.Event;
import dev.sunthread.access.people.TryLater;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.AuthenticationException;
import org.springframework.stereotype.Component;
import org.springframework.web.util.UriComponentsBuilder;

/** Where signing in and out leads: back to the page that was asked for, or to the form again with what was wrong. */
@Component
class SignInAnswers {

    /** The parameter that carries the page that was asked for. */
    static final String TO = "to";

    private static final Pattern LEADS_ELSEWHERE = Pattern.compile("^//|[\\\\\\p{Cntrl}]");

    private final AccessLog log;

    SignInAnswers(AccessLog log) {
        this.log = log;
    }

    /** Somebody has to sign in first. */
    void ask(HttpServletRequest request, HttpServletResponse response) throws IOException {
        var page = UriComponentsBuilder.fromPath("/sign-in");
        if (request.getMethod().equals("GET") && !request.getRequestURI().equals("/")) {
            String query = request.getQueryString();
            page.queryParam(TO, "{to}");
            page = page.uriVariables(Map.of(TO, request.getRequestURI() + (query == null ? "" : "?" + query)));
        }
        if (request.getAttribute(SessionCallers.ENDED) != null) {
            page.queryParam("told", "ended");
        }
        response.sendRedirect(request.getContextPath() + page.encode().toUriString());
    }

    void signedIn(HttpServletRequest request, HttpServletResponse response, Authentication who) throws IOException {
        response.sendRedirect(request.getContextPath() + ownPage(request.getParameter(TO)));
    }

    void refused(HttpServletRequest request, HttpServletResponse response, AuthenticationException why)
            throws IOException {
        boolean belongsHere = isScannedIntoTheFormOfADesk(request);
        var page =
                UriComponentsBuilder.fromPath(SignInDetails.isByBadge(request) || belongsHere ? "/badge" : "/sign-in");
        page.queryParam("told", belongsHere ? "here" : why instanceof TryLater ? "later" : "wrong");
        if (why instanceof TryLater later) {
            page.queryParam("seconds", later.seconds());
        }
        page.queryParam(TO, "{to}");
        response.sendRedirect(request.getContextPath()
                + page.encode()
                        .buildAndExpand(ownPage(request.getParameter(TO)))
                        .toUriString());
    }

    /** A scanner ends a badge with Enter, so that it comes alone; at a station there is a field for it. */
    private static boolean isScannedIntoTheFormOfADesk(HttpServletRequest request) {
        return !SignInDetails.isByBadge(request)
                && "".equals(request.getParameter("secret"))
                && SignInDetails.of(request).device() != null;
    }

    void signedOut(HttpServletRequest request, HttpServletResponse response, @Nullable Authentication who) {
        if (who instanceof SignedIn signedIn) {
            log.noteOf(
                    signedIn.getName(),
                    Event.SIGNED_OUT,
                    signedIn.getPrincipal().station(),
                    null);
        }
    }

    /** A page of this application; the start page for anything that could lead elsewhere. */
    static String ownPage(@Nullable String asked) {
        return asked == null
                        || !asked.startsWith("/")
                        || LEADS_ELSEWHERE.matcher(asked).find()
                ? "/"
                : asked;
    }
}
