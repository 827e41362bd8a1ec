package dev.sunthread.web;

import dev.sunthread.kernel.Busy;
import dev.sunthread.kernel.Refused;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Map;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.servlet.ModelAndView;

/** Shows a refusal that no form could show beside its field as a page with a way on. */
@ControllerAdvice(annotations = Controller.class)
@Order(2)
class RefusedPage {

    @ExceptionHandler
    ModelAndView busy(Busy e, HttpServletResponse response) {
        response.setHeader("Retry-After", String.valueOf(e.comeAgain().toSeconds()));
        return new ModelAndView("web/refused", Map.of("refused", e), HttpStatus.SERVICE_UNAVAILABLE);
    }

    @ExceptionHandler
    ModelAndView refused(Refused e) {
        return new ModelAndView("web/refused", Map.of("refused", e), HttpStatus.CONFLICT);
    }
}
