package dev.sunthread.access.signin;

import dev.sunthread.access.Caller;
import dev.sunthread.access.Callers;
import dev.sunthread.access.Needs;
import dev.sunthread.access.NotAllowed;
import dev.sunthread.access.Right;
import jakarta.servlet.DispatcherType;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.AnnotatedElementUtils;
import org.springframework.web.method.HandlerMethod;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/** Lets a request go on to its handler only if the caller has the right that the handler {@link Needs}. */
@Configuration
class RightsOfAddresses implements WebMvcConfigurer, HandlerInterceptor {

    private static final Set<String> READING = Set.of("GET", "HEAD", "OPTIONS");

    private final Callers callers;

    RightsOfAddresses(Callers callers) {
        this.callers = callers;
    }

    @Override
    public void addInterceptors(InterceptorRegistry registry) {
        registry.addInterceptor(this).order(Ordered.HIGHEST_PRECEDENCE);
    }

    @Override
    public boolean preHandle(HttpServletRequest request, HttpServletResponse response, Object handler)
            throws IOException {
        // what is shown of an error that another request ran into is checked by nobody
        if (handler instanceof HandlerMethod method && request.getDispatcherType() != DispatcherType.ERROR) {
            return mayGoOn(needed(method, request.getMethod()), request, response);
        }
        return true;
    }

    private boolean mayGoOn(@Nullable Right needed, HttpServletRequest request, HttpServletResponse response)
            throws IOException {
        Optional<Caller> caller = callers.current();
        if (needed == Right.SIGN_IN) {
            return true;
        }
        if (needed != null && caller.filter(one -> one.may(needed)).isPresent()) {
            return true;
        }
        if (caller.filter(Caller::mustChangePassword).isPresent()) {
            response.sendRedirect(request.getContextPath() + "/account");
            return false;
        }
        throw new NotAllowed(needed, caller.orElse(null));
    }

    /** The right that a handler needs; nothing if it is closed to everyone, because nobody said who may use it. */
    static @Nullable Right needed(HandlerMethod handler, String method) {
        Needs needs = AnnotatedElementUtils.findMergedAnnotation(handler.getMethod(), Needs.class);
        if (needs == null) {
            needs = AnnotatedElementUtils.findMergedAnnotation(handler.getBeanType(), Needs.class);
        }
        if (needs != null) {
            return needs.value();
        }
        return READING.contains(method) ? Right.LOOK_UP : null;
    }
}
