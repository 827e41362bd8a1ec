package dev.sunthread.web;

import dev.sunthread.access.Asked;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.sql.SQLException;
import java.sql.SQLNonTransientConnectionException;
import java.sql.SQLTransientConnectionException;
import java.util.Locale;
import java.util.Map;
import org.springframework.context.MessageSource;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.stereotype.Component;
import org.thymeleaf.ITemplateEngine;
import org.thymeleaf.context.Context;
import tools.jackson.databind.json.JsonMapper;

/**
 * Says that the database is away, or has no connection to spare. It is said without the database: not even who asks is
 * known, so that neither a session nor a page of errors, which would look for one, has a part in it.
 */
@Component
class DatabaseAway {

    private static final String SECONDS_TO_WAIT = "5";

    private final ITemplateEngine templates;
    private final MessageSource messages;
    private final JsonMapper json;

    DatabaseAway(ITemplateEngine templates, MessageSource messages, JsonMapper json) {
        this.templates = templates;
        this.messages = messages;
        this.json = json;
    }

    /** Whether it is for want of a connection to the database, be it that none is free or that it was lost. */
    static boolean isCauseOf(Throwable failure) {
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLException e && isAway(e)) {
                return true;
            }
        }
        return false;
    }

    // ISO/IEC 9075: class 08 is a connection that fails; class 57, condition P: the server ends it or is not up yet
    private static boolean isAway(SQLException e) {
        String state = String.valueOf(e.getSQLState());
        return e instanceof SQLTransientConnectionException
                || e instanceof SQLNonTransientConnectionException
                || state.startsWith("08")
                || state.startsWith("57P");
    }

    void answer(HttpServletRequest request, HttpServletResponse response) throws IOException {
        response.resetBuffer();
        response.setStatus(HttpStatus.SERVICE_UNAVAILABLE.value());
        response.setHeader(HttpHeaders.RETRY_AFTER, SECONDS_TO_WAIT);
        response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
        response.setCharacterEncoding(StandardCharsets.UTF_8);
        if (Asked.byAProgram(request)) {
            response.setContentType(MediaType.APPLICATION_PROBLEM_JSON_VALUE);
            response.getWriter().write(json.writeValueAsString(problem()));
        } else {
            response.setContentType(MediaType.TEXT_HTML_VALUE);
            templates.process(
                    "web/database-away",
                    new Context(request.getLocale(), Map.of("language", language(request))),
                    response.getWriter());
        }
    }

    private ProblemDetail problem() {
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(
                HttpStatus.SERVICE_UNAVAILABLE, messages.getMessage("away.reason", null, Locale.ENGLISH));
        problem.setProperty("remedy", messages.getMessage("away.remedy", null, Locale.ENGLISH));
        return problem;
    }

    // the language of the words, which is not always the one asked for
    private String language(HttpServletRequest request) {
        return messages.getMessage("away.language", null, request.getLocale());
    }
}
