package dev.sunthread.access.signin;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.http.HttpHeaders;

/** Tells programs, which are answered with a problem (RFC 9457), from persons, who are shown a page. */
public final class Asked {

    private Asked() {}

    public static boolean byAProgram(HttpServletRequest request) {
        String path = request.getRequestURI().substring(request.getContextPath().length());
        String accept = request.getHeader(HttpHeaders.ACCEPT);
        boolean wantsJsonOnly = accept != null && accept.contains("json") && !accept.contains("html");
        return path.startsWith("/api/") || path.startsWith("/v3/") || wantsJsonOnly || MachineFilter.isMachine(request);
    }
}
