package dev.sunthread.genealogy.answer;

import dev.sunthread.genealogy.Root;
import dev.sunthread.genealogy.Scope;
import dev.sunthread.genealogy.TraceQuestion;
import dev.sunthread.genealogy.Way;
import dev.sunthread.kernel.UnitId;
import java.time.OffsetDateTime;
import java.util.TreeMap;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.json.JsonMapper;

/** A question as it is stored beside its answer. */
public final class AskedQuestion {

    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
            .build();

    private AskedQuestion() {}

    public static String write(TraceQuestion question) {
        TreeMap<String, Object> asked = new TreeMap<>();
        asked.put("way", question.way().name());
        asked.put("cutoff", String.valueOf(question.cutoff()));
        if (question.at() != null) {
            asked.put("at", question.at().toString());
        }
        if (question.wider()) {
            asked.put("wider", true);
        }
        Root root = question.root();
        if (root instanceof Root.OfLot lot) {
            asked.put("lot", lot.number());
        } else if (root instanceof Root.OfSupplierLot supplierLot) {
            asked.put("supplierLot", supplierLot.text());
        } else if (root instanceof Root.OfScope scope) {
            asked.put("scope", JSON.readTree(JSON.writeValueAsString(scope.scope())));
        } else if (root instanceof Root.OfUnit unit) {
            asked.put("item", unit.id().item());
            asked.put("serial", unit.id().serial());
            asked.put("issuer", unit.id().issuer());
        }
        return JSON.writeValueAsString(asked);
    }

    public static TraceQuestion read(String text) {
        JsonNode asked = JSON.readTree(text);
        return new TraceQuestion(
                Way.valueOf(asked.get("way").asString()),
                root(asked),
                Long.valueOf(asked.get("cutoff").asString()),
                asked.has("at") ? OffsetDateTime.parse(asked.get("at").asString()) : null,
                asked.has("wider"));
    }

    private static Root root(JsonNode asked) {
        if (asked.has("lot")) {
            return new Root.OfLot(asked.get("lot").asString());
        }
        if (asked.has("supplierLot")) {
            return new Root.OfSupplierLot(asked.get("supplierLot").asString());
        }
        if (asked.has("scope")) {
            return new Root.OfScope(JSON.treeToValue(asked.get("scope"), Scope.class));
        }
        return new Root.OfUnit(new UnitId(
                asked.get("issuer").asString(),
                asked.get("item").asString(),
                asked.get("serial").asString()));
    }
}
