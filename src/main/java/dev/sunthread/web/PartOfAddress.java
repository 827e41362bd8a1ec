package dev.sunthread.web;

import dev.sunthread.database.Bulkhead;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.regex.Pattern;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Has each request use the database connections of its part: stations, files, imports, or pages. One that waits in vain
 * for a connection, or loses it, is answered with 503 and when to come again.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE)
class PartOfAddress extends OncePerRequestFilter {

    private static final Pattern STATIONS = Pattern.compile("/(work|contact|api/v1/scans|api/v1/envelopes)(/.*)?");
    private static final Pattern IMPORTS = Pattern.compile("/(journal|api/v1/journal|api/v1/raw-files)(/.*)?");
    private static final Pattern FILES = Pattern.compile("/api/v1/journal/export|.*\\.(csv|xlsx|pdf)");

    private final DatabaseAway away;

    PartOfAddress(DatabaseAway away) {
        this.away = away;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        try (Bulkhead.Way back = of(request).enter()) {
            chain.doFilter(request, response);
        } catch (ServletException | RuntimeException e) {
            if (response.isCommitted() || !DatabaseAway.isCauseOf(e)) {
                throw e;
            }
            away.answer(request, response);
        }
    }

    static Bulkhead of(HttpServletRequest request) {
        String path = request.getRequestURI().substring(request.getContextPath().length());
        boolean isRead = "GET".equals(request.getMethod());
        // of a form the parameters are not read here: what was sent may be large
        if (FILES.matcher(path).matches() || isRead && request.getParameter("format") != null) {
            return Bulkhead.FILES;
        }
        if (STATIONS.matcher(path).matches()) {
            return Bulkhead.STATIONS;
        }
        return !isRead && IMPORTS.matcher(path).matches() ? Bulkhead.IMPORTS : Bulkhead.PAGES;
    }
}
