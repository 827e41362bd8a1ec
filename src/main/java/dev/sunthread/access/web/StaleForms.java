package dev.sunthread.access.web;

import dev.sunthread.access.Asked;
import dev.sunthread.access.Callers;
import dev.sunthread.access.signin.KeptForms;
import dev.sunthread.access.signin.SignInAnswers;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Map;
import java.util.TreeMap;
import org.springframework.beans.factory.annotation.Qualifier;
import org.springframework.boot.autoconfigure.condition.ConditionalOnWebApplication;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.HandlerExceptionResolver;

/**
 * Answers a form that was open for longer than its session: what was typed stands in it again once its page is shown to
 * somebody signed in. If that can not be, it is shown at once, so that it is not lost.
 */
@Component
@ConditionalOnWebApplication
class StaleForms implements AccessDeniedHandler {

    private final Refusal refusal;
    private final SignInAnswers signIns;
    private final Callers callers;
    private final HandlerExceptionResolver answers;

    StaleForms(
            Refusal refusal,
            SignInAnswers signIns,
            Callers callers,
            @Qualifier("handlerExceptionResolver") HandlerExceptionResolver answers) {
        this.refusal = refusal;
        this.signIns = signIns;
        this.callers = callers;
        this.answers = answers;
    }

    @Override
    public void handle(HttpServletRequest request, HttpServletResponse response, AccessDeniedException e)
            throws IOException {
        if (Asked.byAProgram(request)) {
            answers.resolveException(request, response, null, e);
        } else if (!signIns.leadBack(request, response, callers.mark() != null)) {
            // the page of this status shows them
            request.setAttribute("said", refusal.said("stale"));
            request.setAttribute("typed", typed(request));
            response.sendError(HttpServletResponse.SC_FORBIDDEN);
        }
    }

    private static Map<String, String> typed(HttpServletRequest request) {
        Map<String, String> typed = new TreeMap<>();
        KeptForms.typed(request)
                .forEach(field -> typed.merge(field.name(), field.value(), (one, other) -> one + "\n" + other));
        return typed;
    }
}
