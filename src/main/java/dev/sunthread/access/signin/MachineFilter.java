package dev.sunthread.access.signin;

import dev.sunthread.access.Asked;
import dev.sunthread.access.machine.Tokens;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextImpl;
import org.springframework.web.filter.OncePerRequestFilter;

/** Makes a caller of the token that a machine sends. */
class MachineFilter extends OncePerRequestFilter {

    private final Tokens tokens;

    MachineFilter(Tokens tokens) {
        this.tokens = tokens;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        tokens.caller(String.valueOf(Asked.token(request)))
                .ifPresent(caller -> SecurityContextHolder.setContext(new SecurityContextImpl(new SignedIn(caller))));
        chain.doFilter(request, response);
    }
}
