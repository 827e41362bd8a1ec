package dev.sunthread.web.table;

import dev.sunthread.access.AccessLog;
import dev.sunthread.access.AccessLog.Event;
import dev.sunthread.kernel.Table;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Configuration;
import org.springframework.http.HttpStatus;
import org.springframework.web.server.ResponseStatusException;
import org.springframework.web.servlet.HandlerInterceptor;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/**
 * Gives one of the tables of a model (attribute {@code tables}) as a file, the one that the parameter {@code table} names or
 * the first: where its address asks for a {@code format}, or where a handler names one as its
 * view, and notes in the access log who took it. It sets the view itself, because one found by its name depends on what the browser says it accepts.
 */
@Configuration
class TablesAsFiles implements WebMvcConfigurer, HandlerInterceptor {

    private final Map<String, TableView> views;
    private final AccessLog log;

    TablesAsFiles(Map<String, TableView> views, AccessLog log) {
        this.views = views;
        this.log = log;
    }

    @Override
    public void addInterceptors(InterceptorRegistry registry) {
        registry.addInterceptor(this);
    }

    @Override
    public void postHandle(
            HttpServletRequest request, HttpServletResponse response, Object handler, @Nullable ModelAndView page) {
        if (page != null && page.getModel().containsKey("tables")) {
            TableView file = views.get(asked(request.getParameter("format"), page.getViewName()));
            if (file != null) {
                Table<?> table = chosen(page.getModel(), request.getParameter("table"));
                log.note(Event.EXPORTED, request.getRequestURI(), table.name());
                page.addObject(TableView.TABLE, table);
                page.setView(file);
            }
        }
    }

    private static String asked(@Nullable String format, @Nullable String view) {
        return String.valueOf(format == null ? view : format);
    }

    private static Table<?> chosen(Map<String, Object> model, @Nullable String name) {
        List<?> tables = model.get("tables") instanceof List<?> several ? several : List.of();
        return tables.stream()
                .map(table -> (Table<?>) table)
                .filter(table -> name == null || table.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND, "This page has no such table"));
    }
}
