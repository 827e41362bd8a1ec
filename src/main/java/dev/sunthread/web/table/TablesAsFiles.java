package dev.sunthread.web.table;

import dev.sunthread.access.AccessLog;
import dev.sunthread.access.AccessLog.Event;
import dev.sunthread.kernel.Table;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Configuration;
import org.springframework.http.HttpStatus;
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
                give(page, chosen(page.getModel(), request.getParameter("table")), file, request);
            }
        }
    }

    private void give(ModelAndView page, Optional<Table<?>> table, TableView file, HttpServletRequest request) {
        if (table.isPresent()) {
            log.note(Event.EXPORTED, request.getRequestURI(), table.get().name());
            page.addObject(TableView.TABLE, table.get());
            page.setView(file);
        } else {
            page.addObject("list", String.valueOf(request.getParameter("table")));
            page.setViewName("web/no-list");
            page.setStatus(HttpStatus.NOT_FOUND);
        }
    }

    private static String asked(@Nullable String format, @Nullable String view) {
        return String.valueOf(format == null ? view : format);
    }

    private static Optional<Table<?>> chosen(Map<String, Object> model, @Nullable String name) {
        List<?> tables = model.get("tables") instanceof List<?> several ? several : List.of();
        for (Object one : tables) {
            if (one instanceof Table<?> table && (name == null || table.name().equals(name))) {
                return Optional.of(table);
            }
        }
        return Optional.empty();
    }
}
