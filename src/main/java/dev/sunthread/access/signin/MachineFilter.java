package dev.sunthread.access.signin;

import dev.sunthread.access.machine.Tokens;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextImpl;
import org.springframework.web.filter.OncePerRequestFilter;

/** Makes a caller of the token that a machine sends (RFC 6750, section 2.1). */
class MachineFilter extends OncePerRequestFilter {

    private static final String BEARER = "Bearer ";

    private final Tokens tokens;

    MachineFilter(Tokens tokens) {
        this.tokens = tokens;
    }

    /** Whether a request comes with a token, good or not. */
    static boolean isMachine(HttpServletRequest request) {
        return secret(request) != null;
    }

    private static @Nullable String secret(HttpServletRequest request) {
        String header = request.getHeader(HttpHeaders.AUTHORIZATION);
        return header != null && header.regionMatches(true, 0, BEARER, 0, BEARER.length())
                ? header.substring(BEARER.length()).strip()
                : null;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        tokens.caller(String.valueOf(secret(request)))
                .ifPresent(caller -> SecurityContextHolder.setContext(new SecurityContextImpl(new SignedIn(caller))));
        chain.doFilter(request, response);
    }
}
