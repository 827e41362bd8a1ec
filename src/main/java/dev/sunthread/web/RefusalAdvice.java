package dev.sunthread.web;

import dev.sunthread.journal.NoText;
import dev.sunthread.kernel.Busy;
import dev.sunthread.kernel.Refused;
import dev.sunthread.kernel.RuleBroken;
import dev.sunthread.ledger.body.Unreadable;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.bind.annotation.RestControllerAdvice;

/** Answers a refusal over HTTP as a problem (RFC 9457) that says what is wrong and what to do. */
@RestControllerAdvice(annotations = RestController.class)
@Order(1)
class RefusalAdvice {

    @ExceptionHandler
    ProblemDetail unreadable(Unreadable e) {
        ProblemDetail problem = problem(HttpStatus.UNPROCESSABLE_CONTENT, e);
        problem.setProperty("problems", e.problems());
        return problem;
    }

    @ExceptionHandler
    ProblemDetail broken(RuleBroken e) {
        ProblemDetail problem = problem(HttpStatus.CONFLICT, e);
        problem.setProperty("rule", e.rule());
        return problem;
    }

    @ExceptionHandler
    ProblemDetail noText(NoText e) {
        return problem(HttpStatus.UNSUPPORTED_MEDIA_TYPE, e);
    }

    @ExceptionHandler
    ProblemDetail refused(Refused e) {
        return problem(HttpStatus.CONFLICT, e);
    }

    @ExceptionHandler
    ResponseEntity<ProblemDetail> busy(Busy e) {
        return ResponseEntity.status(HttpStatus.SERVICE_UNAVAILABLE)
                .header(HttpHeaders.RETRY_AFTER, String.valueOf(e.comeAgain().toSeconds()))
                .body(problem(HttpStatus.SERVICE_UNAVAILABLE, e));
    }

    private static ProblemDetail problem(HttpStatus status, Refused e) {
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(status, e.reason());
        problem.setProperty("remedy", e.remedy());
        return problem;
    }
}
