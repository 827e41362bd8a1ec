package dev.sunthread.genealogy.web;

import dev.sunthread.genealogy.Scope;
import dev.sunthread.kernel.Refused;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.web.util.UriUtils;
import tools.jackson.databind.json.JsonMapper;

/** Where a scope joins suspects by {@code all} or {@code except}: the address that joins the answers of its parts instead. */
final class JoinedOffer {

    private JoinedOffer() {}

    static @Nullable String page(TraceRequest asked, @Nullable Long cutoff) {
        return address("/compare/joined?", asked, cutoff);
    }

    static @Nullable String json(TraceRequest asked, @Nullable Long cutoff) {
        return address("/api/v1/traces/joined?", asked, cutoff);
    }

    private static @Nullable String address(String path, TraceRequest asked, @Nullable Long cutoff) {
        Scope scope = scope(asked);
        String known = cutoff == null ? "" : "&cutoff=" + cutoff;
        if (scope instanceof Scope.All all && all.scopes().size() > 1) {
            return path + "of=" + questions(all.scopes(), asked) + "&join=all" + known;
        }
        return scope instanceof Scope.Except except
                ? path + "of=" + questions(List.of(except.scope(), except.without()), asked) + "&join=only" + known
                : null;
    }

    private static @Nullable Scope scope(TraceRequest asked) {
        try {
            return asked.scope() == null || asked.scope().isBlank() ? null : ScopeText.read(asked.scope());
        } catch (Refused unreadable) {
            return null;
        }
    }

    private static String questions(List<Scope> scopes, TraceRequest asked) {
        String all = scopes.stream()
                .map(scope -> question(scope, Boolean.TRUE.equals(asked.wider())))
                .toList()
                .toString();
        return UriUtils.encode(all, StandardCharsets.UTF_8);
    }

    private static String question(Scope scope, boolean wider) {
        Map<String, Object> question = new LinkedHashMap<>();
        if (scope instanceof Scope.Lot lot) {
            question.put("lot", lot.lot());
        } else if (scope instanceof Scope.SupplierLot lot) {
            question.put("supplierLot", lot.supplierLot());
        } else {
            question.put("scope", JsonMapper.shared().readTree(ScopeText.write(scope)));
        }
        if (wider) {
            question.put("wider", true);
        }
        return JsonMapper.shared().writeValueAsString(question);
    }
}
