package dev.sunthread.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Configuration;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/**
 * Puts the cut-off of an answer, which its page names as {@code answeredAt}, into the page's own address: files, pages,
 * print and another language are of that answer, whatever is recorded since.
 */
@Configuration
class AnsweredAddress implements WebMvcConfigurer, HandlerInterceptor {

    @Override
    public void addInterceptors(InterceptorRegistry registry) {
        registry.addInterceptor(this);
    }

    @Override
    public void postHandle(
            HttpServletRequest request, HttpServletResponse response, Object handler, @Nullable ModelAndView page) {
        if (page != null
                && page.getModel().get("answeredAt") instanceof Long cutoff
                && page.getModel().get("self") instanceof PageAddress self) {
            PageAddress answered = self.with("cutoff", cutoff);
            page.addObject("self", answered);
            page.addObject("back", answered.toString());
        }
    }
}
