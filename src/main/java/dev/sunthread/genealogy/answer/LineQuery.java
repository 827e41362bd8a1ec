package dev.sunthread.genealogy.answer;

import dev.sunthread.genealogy.AnswerLine;
import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.LevelOrder;
import dev.sunthread.genealogy.LineFilter;
import dev.sunthread.genealogy.When;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A filter of lines as a query. */
public record LineQuery(LineFilter filter, long offset, long most) {

    public static final long EVERY = Long.MAX_VALUE;

    public String select() {
        String page = most == EVERY ? "" : " LIMIT " + most + " OFFSET " + offset;
        return "SELECT kind, level, item, name, issuer, ever, now, at_shipment, at, reason, path, place, within, spot,"
                + " holds, shipments"
                + " FROM genealogy.answer_line WHERE " + where() + " ORDER BY " + order() + page;
    }

    public String where() {
        StringBuilder where = new StringBuilder("answer = ?");
        if (filter.level() != null) {
            where.append(" AND level = ?");
        }
        if (filter.when() != null || filter.certainty() != null) {
            where.append(" AND ").append(column()).append(filter.certainty() == null ? " IS NOT NULL" : " = ?");
        }
        if (filter.place() != null) {
            where.append(" AND spot = ?");
        }
        if (filter.held() != null) {
            where.append(" AND cardinality(holds) ").append(filter.held() ? "> 0" : "= 0");
        }
        if (filter.outermost() != null) {
            where.append(" AND kind = 'UNIT' AND within IS ").append(filter.outermost() ? "NULL" : "NOT NULL");
        }
        if (filter.text() != null) {
            where.append(" AND position(lower(?) IN lower(name || ' ' || item || ' ' || place || ' ' || reason)) > 0");
        }
        return where.toString();
    }

    public Object[] params(String answer) {
        List<Object> params = new ArrayList<>(List.of(answer));
        if (filter.level() != null) {
            params.add(filter.level());
        }
        if (filter.certainty() != null) {
            params.add(filter.certainty().name());
        }
        if (filter.place() != null) {
            params.add(filter.place());
        }
        if (filter.text() != null) {
            params.add(filter.text());
        }
        return params.toArray();
    }

    private String column() {
        When when = filter.when() == null ? When.EVER : filter.when();
        return switch (when) {
            case EVER -> "ever";
            case NOW -> "now";
            case AT_SHIPMENT -> "at_shipment";
            case AT -> "at";
        };
    }

    private String order() {
        String direction = filter.descending() ? " DESC" : "";
        String first =
                switch (filter.sort()) {
                    case LEVEL -> LevelOrder.RANK;
                    case NAME -> "name";
                    case CERTAINTY -> column();
                    case PLACE -> "place";
                };
        // the words of classes happen to stand in the order of strength
        return first + direction + ", " + LevelOrder.RANK + ", level, " + column() + ", name, item, issuer";
    }

    public static AnswerLine line(ResultSet row) throws SQLException {
        return new AnswerLine(
                row.getString(1),
                row.getString(2),
                row.getString(3),
                row.getString(4),
                row.getString(5),
                Certainty.valueOf(row.getString(6)),
                certainty(row.getString(7)),
                certainty(row.getString(8)),
                certainty(row.getString(9)),
                row.getString(10),
                texts(row, 11),
                row.getString(12),
                row.getString(13),
                row.getString(14),
                texts(row, 15),
                texts(row, 16));
    }

    private static @Nullable Certainty certainty(@Nullable String name) {
        return name == null ? null : Certainty.valueOf(name);
    }

    private static List<String> texts(ResultSet row, int column) throws SQLException {
        return List.of((String[]) row.getArray(column).getArray());
    }
}
