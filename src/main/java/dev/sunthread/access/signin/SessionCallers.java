package dev.sunthread.access.signin;

import dev.sunthread.access.AccessLog;
import dev.sunthread.access.AccessLog.Event;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextImpl;
import org.springframework.security.web.context.HttpRequestResponseHolder;
import org.springframework.security.web.context.SecurityContextRepository;
import org.springframework.stereotype.Component;

/**
 * Keeps a sign-in in the session and makes a caller of it with every request. The session lies in the database: any
 * instance can answer, signing out holds at all of them, and nothing a browser keeps outlives it.
 */
@Component
class SessionCallers implements SecurityContextRepository {

    /** The attribute of a request whose session has ended with it: whose it was. */
    static final String ENDED = "session ended";

    private static final String SIGN_IN = "sign-in";

    private final PersonCallers callers;
    private final AccessLog log;

    SessionCallers(PersonCallers callers, AccessLog log) {
        this.callers = callers;
        this.log = log;
    }

    @Override
    @Deprecated
    public SecurityContext loadContext(HttpRequestResponseHolder holder) {
        HttpServletRequest request = holder.getRequest();
        SignIn signIn = signIn(request.getSession(false));
        return signIn == null
                ? SecurityContextHolder.createEmptyContext()
                : callers.of(signIn)
                        .<SecurityContext>map(SecurityContextImpl::new)
                        .orElseGet(() -> end(request, signIn));
    }

    private SecurityContext end(HttpServletRequest request, SignIn signIn) {
        HttpSession session = request.getSession(false);
        if (session != null) {
            session.invalidate();
        }
        request.setAttribute(ENDED, signIn.mark());
        log.noteOf(signIn.mark(), Event.SESSION_ENDED, signIn.station(), null);
        return SecurityContextHolder.createEmptyContext();
    }

    private static @Nullable SignIn signIn(@Nullable HttpSession session) {
        return session != null && session.getAttribute(SIGN_IN) instanceof SignIn signIn ? signIn : null;
    }

    @Override
    public void saveContext(SecurityContext context, HttpServletRequest request, HttpServletResponse response) {
        if (context.getAuthentication() instanceof SignedIn signedIn && signedIn.signIn() != null) {
            HttpSession session = request.getSession();
            session.setAttribute(SIGN_IN, signedIn.signIn());
            session.setMaxInactiveInterval(
                    (int) callers.length(signedIn.signIn().means()).idle().toSeconds());
        } else if (request.getSession(false) != null) {
            request.getSession().removeAttribute(SIGN_IN);
        }
    }

    @Override
    public boolean containsContext(HttpServletRequest request) {
        return signIn(request.getSession(false)) != null;
    }
}
