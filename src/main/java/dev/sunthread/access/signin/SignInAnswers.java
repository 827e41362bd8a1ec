package dev.sunthread.access.signin;

import dev.sunthread.access.AccessLog;
import dev.sunthread.access.AccessLog.Event;
import dev.sunthread.access.people.TryLater;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.AuthenticationException;
import org.springframework.stereotype.Component;
import org.springframework.web.util.UriComponentsBuilder;

/** Where signing in and out leads: back to the page that was asked for, or to the form again with what was wrong. */
@Component
public class SignInAnswers {

    /** The parameter that carries the page that was asked for. */
    static final String TO = "to";

    private static final Pattern LEADS_ELSEWHERE = Pattern.compile("^//|[\\\\\\p{Cntrl}]|^/error(?![^/?])");

    private final AccessLog log;
    private final KeptForms forms;

    SignInAnswers(AccessLog log, KeptForms forms) {
        this.log = log;
        this.forms = forms;
    }

    /** Somebody has to sign in first. */
    void ask(HttpServletRequest request, HttpServletResponse response) throws IOException {
        boolean ended = request.getAttribute(SessionCallers.ENDED) != null;
        if (request.getMethod().equals("GET")) {
            String query = request.getQueryString();
            ask(request.getRequestURI() + (query == null ? "" : "?" + query), ended, request, response);
        } else {
            Optional<String> page = forms.keep(request);
            ask(page.orElse("/"), ended || page.isPresent(), request, response);
        }
    }

    private static void ask(String to, boolean ended, HttpServletRequest request, HttpServletResponse response)
            throws IOException {
        var page = UriComponentsBuilder.fromPath("/sign-in");
        if (!to.equals("/")) {
            page.queryParam(TO, "{to}");
            page = page.uriVariables(Map.of(TO, to));
        }
        if (ended) {
            page.queryParam("told", "ended");
        }
        response.sendRedirect(request.getContextPath() + page.encode().toUriString());
    }

    /**
     * Leads on from a form whose token is not known any more: to its page again, and if nobody is signed in to the sign-in
     * before; what was typed is kept meanwhile. Gives whether it did.
     */
    public boolean leadBack(HttpServletRequest request, HttpServletResponse response, boolean isSignedIn)
            throws IOException {
        Optional<String> page = forms.keep(request);
        if (page.isPresent() && isSignedIn) {
            response.sendRedirect(request.getContextPath() + page.get());
        } else if (page.isPresent()) {
            ask(page.get(), true, request, response);
        }
        return page.isPresent();
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

    /** A page of this application; the start page for anything that could lead elsewhere, or only tells an error. */
    static String ownPage(@Nullable String asked) {
        return asked == null
                        || !asked.startsWith("/")
                        || LEADS_ELSEWHERE.matcher(asked).find()
                ? "/"
                : asked;
    }
}
