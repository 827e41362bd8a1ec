package dev.sunthread.access;

import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;

/** Tells programs, which are answered with a problem (RFC 9457), from persons, who are shown a page. */
public final class Asked {

    private static final String BEARER = "Bearer ";

    private Asked() {}

    public static boolean byAProgram(HttpServletRequest request) {
        String path = request.getRequestURI().substring(request.getContextPath().length());
        String accept = request.getHeader(HttpHeaders.ACCEPT);
        boolean wantsJsonOnly = accept != null && accept.contains("json") && !accept.contains("html");
        return path.startsWith("/api/") || path.startsWith("/v3/") || wantsJsonOnly || token(request) != null;
    }

    /** The token that a request comes with, good or not (RFC 6750, section 2.1). */
    public static @Nullable String token(HttpServletRequest request) {
        String header = request.getHeader(HttpHeaders.AUTHORIZATION);
        return header != null && header.regionMatches(true, 0, BEARER, 0, BEARER.length())
                ? header.substring(BEARER.length()).strip()
                : null;
    }
}
