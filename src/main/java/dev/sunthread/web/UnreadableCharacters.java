package dev.sunthread.web;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Arrays;
import java.util.Set;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Refuses addresses and forms with a character of number nought, which no label has and the database can't keep. A scan is
 * taken whatever it holds.
 */
@Component
class UnreadableCharacters extends OncePerRequestFilter {

    /** What a scanner may send as it is: taken at a station, and looked for. */
    private static final Set<String> SCANS = Set.of("/work", "/work/unread", "/search");

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (texts(request).anyMatch(text -> text.indexOf('\0') >= 0)) {
            response.sendError(
                    HttpServletResponse.SC_BAD_REQUEST, "A text holds the character of number nought; leave it out");
        } else {
            chain.doFilter(request, response);
        }
    }

    private static Stream<String> texts(HttpServletRequest request) {
        return request.getParameterMap().entrySet().stream()
                .flatMap(given -> Stream.concat(Stream.of(given.getKey()), Arrays.stream(given.getValue())));
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        String type = request.getContentType();
        return SCANS.contains(request.getRequestURI()) || type != null && type.startsWith("multipart/");
    }
}
