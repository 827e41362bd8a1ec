package dev.sunthread.web;

import jakarta.servlet.DispatcherType;
import jakarta.servlet.http.HttpServletRequest;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;

/** Tells every page its own address, as {@code self}. */
@ControllerAdvice(annotations = Controller.class)
class PageAddresses {

    @ModelAttribute("self")
    PageAddress self(HttpServletRequest request) {
        return PageAddress.of(request.getRequestURI(), request.getQueryString());
    }

    /** Where a choice of language leads back to: the page itself, or home if it only answers what was sent. */
    @ModelAttribute("back")
    String back(HttpServletRequest request) {
        boolean canBeReadAgain =
                request.getMethod().equals("GET") && request.getDispatcherType() != DispatcherType.ERROR;
        return canBeReadAgain ? self(request).toString() : "/";
    }
}
