package dev.sunthread.web.table;

import dev.sunthread.kernel.Table;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.context.i18n.LocaleContextHolder;
import org.springframework.web.servlet.View;

/** Writes a table as a file in the reader's language, whose name says up to which ledger position it counts. */
abstract class TableView implements View {

    /** The attribute of a model that holds the table to write. */
    static final String TABLE = "table to write";

    private static final Object[] NONE = {};

    private final MessageSource messages;
    private final String ending;
    private final String type;

    TableView(MessageSource messages, String ending, String type) {
        this.messages = messages;
        this.ending = ending;
        this.type = type;
    }

    @Override
    public void render(@Nullable Map<String, ?> given, HttpServletRequest request, HttpServletResponse response)
            throws IOException {
        Map<String, ?> model = given == null ? Map.of() : given;
        if (!(model.get(TABLE) instanceof Table<?> table)) {
            throw new IllegalStateException("No table is given to be written");
        }
        Object cutoff = model.get("cutoff");
        String name = cutoff == null ? table.name() : table.name() + "-at-" + cutoff;
        response.setContentType(type);
        response.setHeader(
                "Content-Disposition", "attachment; filename=\"" + name.replace(' ', '-') + "." + ending + "\"");
        if (cutoff != null) {
            response.setHeader("Ledger-Position", cutoff.toString());
        }
        Locale reader = LocaleContextHolder.getLocale();
        write(table.headed(heading -> messages.getMessage(heading, NONE, heading, reader)), response);
    }

    abstract void write(Table<?> table, HttpServletResponse response) throws IOException;
}
