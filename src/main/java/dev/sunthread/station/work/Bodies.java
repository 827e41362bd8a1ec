package dev.sunthread.station.work;

import dev.sunthread.production.UnitName;
import dev.sunthread.station.pass.Passing;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The bodies of what a station records, by the fields of the journal. */
public final class Bodies {

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private Bodies() {}

    static ObjectNode birth(UnitName unit, String station) {
        ObjectNode body = JSON.objectNode();
        body.set("units", JSON.arrayNode().add(unit(unit)));
        return body.put("station", station);
    }

    static ObjectNode installation(
            @Nullable UnitName unit, Work.@Nullable Taken part, UnitName parent, String position, String station) {
        ObjectNode child = JSON.objectNode();
        if (unit != null) {
            child.set("unit", unit(unit));
        } else if (part != null) {
            child.put("lot", part.lot());
        }
        ObjectNode body = JSON.objectNode();
        body.set("child", child);
        body.set("parent", unit(parent));
        return body.put("position", position).put("station", station);
    }

    static ObjectNode step(
            String operation, String station, Collection<UnitName> on, @Nullable OffsetDateTime start, ArrayNode uses) {
        ObjectNode body = JSON.objectNode().put("operation", operation).put("station", station);
        body.set("units", units(on));
        if (start != null) {
            body.put("startedAt", text(start));
        }
        body.set("uses", uses);
        return body;
    }

    static ObjectNode useOfScanned(Work.Taken taken) {
        ObjectNode use = JSON.objectNode().put("item", taken.item()).put("lot", taken.lot());
        return taken.container() == null ? use : use.put("container", taken.container());
    }

    /** What was drawn from a position; which lot that was is for the records of the position to tell. */
    static ObjectNode useOfLoaded(String item, String position) {
        return JSON.objectNode().put("item", item).put("position", position);
    }

    static ObjectNode charge(String station, String position, String lot, @Nullable String container) {
        ObjectNode body = at(station, position).put("lot", lot);
        return container == null ? body : body.put("container", container);
    }

    static ObjectNode discharge(String station, String position, @Nullable String lot) {
        ObjectNode body = at(station, position);
        return lot == null ? body : body.put("lot", lot);
    }

    static ObjectNode cleanPoint(String station, String position, String evidence) {
        return at(station, position).put("evidence", evidence);
    }

    static ObjectNode carrierLoad(
            String carrier, @Nullable UnitName unit, @Nullable String inner, String position, String station) {
        ObjectNode load = JSON.objectNode();
        if (unit != null) {
            load.set("unit", unit(unit));
        } else {
            load.put("carrier", inner);
        }
        load.put("position", position);
        ObjectNode body = JSON.objectNode().put("carrier", carrier).put("station", station);
        body.set("loads", JSON.arrayNode().add(load));
        return body;
    }

    static ObjectNode carrierUnload(String carrier, String station) {
        return JSON.objectNode().put("carrier", carrier).put("station", station);
    }

    static ObjectNode cureRun(Work load, String run, String recipe, OffsetDateTime start) {
        ObjectNode body = JSON.objectNode()
                .put("run", run)
                .put("recipe", recipe)
                .put("equipment", load.name())
                .put("startedAt", text(start));
        body.set("units", units(load.units()));
        ArrayNode carriers = body.putArray("carriers");
        load.carriers().forEach(carrier -> carriers.addObject().put("carrier", carrier));
        return body;
    }

    static ObjectNode shipment(String number, @Nullable String consignee, Collection<UnitName> shipped) {
        ObjectNode body = JSON.objectNode().put("shipment", number).put("consignee", consignee);
        body.set("units", units(shipped));
        return body;
    }

    static ObjectNode taking(String entry, String why) {
        return JSON.objectNode().put("entry", entry).put("why", why);
    }

    /** What a person signs so that a rule is passed. */
    public static ObjectNode rulePass(Passing passing, String why) {
        ObjectNode body = JSON.objectNode().put("rule", passing.rule()).put("why", why);
        body.set("units", units(passing.units()));
        passing.lots().forEach(body.putArray("lots")::add);
        passing.containers().forEach(body.putArray("containers")::add);
        return passing.operation() == null ? body : body.put("operation", passing.operation());
    }

    static ArrayNode list() {
        return JSON.arrayNode();
    }

    private static ObjectNode at(String station, String position) {
        return JSON.objectNode().put("station", station).put("position", position);
    }

    private static ArrayNode units(Collection<UnitName> names) {
        ArrayNode units = JSON.arrayNode();
        names.forEach(name -> units.add(unit(name)));
        return units;
    }

    private static ObjectNode unit(UnitName name) {
        ObjectNode unit = JSON.objectNode().put("item", name.item()).put("serial", name.serial());
        return name.issuer() == null ? unit : unit.put("issuer", name.issuer());
    }

    private static String text(OffsetDateTime at) {
        return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(at);
    }
}
