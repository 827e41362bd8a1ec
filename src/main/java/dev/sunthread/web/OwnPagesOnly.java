package dev.sunthread.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Set;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Refuses what a browser says it sends on behalf of another site's page, whoever is signed in; forms are protected by a
 * token beside.
 */
@Component
class OwnPagesOnly extends OncePerRequestFilter {

    private static final Set<String> READING = Set.of("GET", "HEAD", "OPTIONS");
    private static final Set<String> OWN = Set.of("same-origin", "none");

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        String site = request.getHeader("Sec-Fetch-Site");
        if (!READING.contains(request.getMethod()) && site != null && !OWN.contains(site)) {
            response.sendError(HttpServletResponse.SC_FORBIDDEN, "Sent by another site's page");
        } else {
            chain.doFilter(request, response);
        }
    }
}
