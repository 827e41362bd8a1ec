package dev.sunthread.access.web;

import dev.sunthread.access.Asked;
import dev.sunthread.access.NotAllowed;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Map;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.security.core.AuthenticationException;
import org.springframework.security.web.csrf.CsrfException;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.servlet.ModelAndView;

/** Answers a request that may not be done: with a page for persons, with a problem (RFC 9457) for programs. */
@ControllerAdvice
@Order(Ordered.HIGHEST_PRECEDENCE)
class RefusedAccess {

    private final Refusal refusal;

    RefusedAccess(Refusal refusal) {
        this.refusal = refusal;
    }

    @ExceptionHandler
    Object notAllowed(NotAllowed e, HttpServletRequest request) {
        return answer(refusal.of(e), HttpStatus.FORBIDDEN, request);
    }

    @ExceptionHandler
    Object notSignedIn(AuthenticationException e, HttpServletRequest request) {
        return answer(refusal.said("token"), HttpStatus.UNAUTHORIZED, request);
    }

    @ExceptionHandler
    ProblemDetail withoutToken(CsrfException e) {
        return problem(refusal.said("stale"), HttpStatus.FORBIDDEN);
    }

    private static Object answer(Refusal.Said said, HttpStatus status, HttpServletRequest request) {
        if (!Asked.byAProgram(request)) {
            return new ModelAndView("error/403", Map.of("said", said), status);
        }
        var answer = ResponseEntity.status(status);
        if (status == HttpStatus.UNAUTHORIZED) {
            answer.header(HttpHeaders.WWW_AUTHENTICATE, "Bearer");
        }
        return answer.body(problem(said, status));
    }

    private static ProblemDetail problem(Refusal.Said said, HttpStatus status) {
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(status, said.reason());
        problem.setProperty("remedy", said.remedy());
        return problem;
    }
}
