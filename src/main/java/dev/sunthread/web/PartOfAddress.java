package dev.sunthread.web;

import dev.sunthread.database.Bulkhead;
import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.sql.SQLTransientConnectionException;
import java.util.regex.Pattern;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Has each request use the database connections of its part: stations, files, imports, or pages. One that waits in vain
 * for a connection is answered with 503 and when to come again.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE)
class PartOfAddress extends OncePerRequestFilter {

    static final String SECONDS_TO_WAIT = "5";

    private static final Pattern STATIONS = Pattern.compile("/(work|contact|api/v1/scans|api/v1/envelopes)(/.*)?");
    private static final Pattern IMPORTS = Pattern.compile("/(journal|api/v1/journal|api/v1/raw-files)(/.*)?");
    private static final Pattern FILES = Pattern.compile("/api/v1/journal/export|.*\\.(csv|xlsx|pdf)");

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        try (Bulkhead.Way back = of(request).enter()) {
            chain.doFilter(request, response);
        } catch (ServletException | RuntimeException e) {
            if (response.isCommitted() || !isForWantOfAConnection(e)) {
                throw e;
            }
            response.setHeader("Retry-After", SECONDS_TO_WAIT);
            response.sendError(
                    HttpServletResponse.SC_SERVICE_UNAVAILABLE, "Every connection to the database is in use");
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

    private static boolean isForWantOfAConnection(Throwable e) {
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLTransientConnectionException) {
                return true;
            }
        }
        return false;
    }
}
