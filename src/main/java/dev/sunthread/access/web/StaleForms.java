package dev.sunthread.access.web;

import dev.sunthread.access.Asked;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.boot.autoconfigure.condition.ConditionalOnWebApplication;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.HandlerExceptionResolver;

/** Answers a form that was open for longer than its session: what was typed is shown, so that it is not lost. */
@Component
@ConditionalOnWebApplication
class StaleForms implements AccessDeniedHandler {

    private static final Set<String> SECRETS = Set.of("secret", "password", "old", "again", "pin", "badge");

    private final Refusal refusal;
    private final HandlerExceptionResolver answers;

    StaleForms(Refusal refusal, @Qualifier("handlerExceptionResolver") HandlerExceptionResolver answers) {
        this.refusal = refusal;
        this.answers = answers;
    }

    @Override
    public void handle(HttpServletRequest request, HttpServletResponse response, AccessDeniedException e)
            throws IOException {
        if (Asked.byAProgram(request)) {
            answers.resolveException(request, response, null, e);
        } else {
            // the page of this status shows them
            request.setAttribute("said", refusal.said("stale"));
            request.setAttribute("typed", typed(request));
            response.sendError(HttpServletResponse.SC_FORBIDDEN);
        }
    }

    private static Map<String, String> typed(HttpServletRequest request) {
        Map<String, String> typed = new TreeMap<>();
        request.getParameterMap().forEach((name, values) -> {
            if (!name.startsWith("_") && !SECRETS.contains(name)) {
                typed.put(name, String.join("\n", values));
            }
        });
        return typed;
    }
}
