package dev.sunthread.paper.form;

import dev.sunthread.catalog.Item;
import dev.sunthread.catalog.Items;
import dev.sunthread.catalog.RouteStep;
import dev.sunthread.catalog.RouteSteps;
import dev.sunthread.kernel.Refused;
import dev.sunthread.paper.FormKind;
import dev.sunthread.paper.Sheet;
import dev.sunthread.paper.form.Box.Holds;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Says what the records of a sheet ask for, by what was released when it was printed. */
@Service
public class Forms {

    private static final int CARRIERS = 4;
    private static final int LOADS = 6;
    private static final int UNITS = 8;

    private final Items items;
    private final RouteSteps routes;
    private final OperationBoxes operations;

    Forms(Items items, RouteSteps routes, OperationBoxes operations) {
        this.items = items;
        this.routes = routes;
        this.operations = operations;
    }

    @Transactional(readOnly = true)
    public Form of(Sheet sheet) {
        return of(sheet.form(), sheet.station(), sheet.item(), sheet.operation(), sheet.printedAt());
    }

    /** The form for a kind of happening at a station. @throws Refused if no route in force has the operation */
    @Transactional(readOnly = true)
    public Form of(
            FormKind kind, String station, @Nullable String item, @Nullable String operation, OffsetDateTime at) {
        if (kind != FormKind.OPERATION) {
            return new Form(kind, station, null, null, null, List.of(), boxes(kind));
        }
        Item known = items.find(String.valueOf(item)).orElseThrow(() -> noSuch(item, operation));
        RouteStep step =
                routes.of(known.id(), String.valueOf(operation), at).orElseThrow(() -> noSuch(item, operation));
        return new Form(kind, station, item, operation, step.name(), step.cautions(), operations.of(known, step, at));
    }

    private static Refused noSuch(@Nullable String item, @Nullable String operation) {
        return new Refused(
                "The route of " + item + " in force has no operation " + operation,
                "Choose an operation of a released route");
    }

    private static List<Box> boxes(FormKind kind) {
        return switch (kind) {
            case OPERATION -> List.of();
            case CHARGE ->
                List.of(
                        Box.needed("material", Holds.MATERIAL, "paper.box.material"),
                        Box.needed("position", Holds.POSITION, "paper.box.position"));
            case DISCHARGE ->
                List.of(
                        Box.optional("material", Holds.MATERIAL, "paper.box.material"),
                        Box.needed("position", Holds.POSITION, "paper.box.position"));
            case CLEAN_POINT ->
                List.of(
                        Box.needed("position", Holds.POSITION, "paper.box.position"),
                        Box.needed("evidence", Holds.TEXT, "paper.box.evidence"));
            case CARRIER_LOAD -> onCarrier();
            case RUN -> inRun();
            case SHIPMENT -> shipped();
        };
    }

    private static List<Box> onCarrier() {
        List<Box> boxes = new ArrayList<>();
        boxes.add(Box.needed("carrier", Holds.TEXT, "paper.box.carrier"));
        for (int i = 1; i <= LOADS; i++) {
            boxes.add(new Box("load." + i, "paper.box.load", List.of("" + i), Holds.LOAD, i == 1));
            boxes.add(Box.optional("place." + i, Holds.TEXT, "paper.box.place", "" + i));
        }
        return boxes;
    }

    private static List<Box> inRun() {
        List<Box> boxes = new ArrayList<>();
        boxes.add(Box.needed("equipment", Holds.TEXT, "paper.box.equipment"));
        boxes.add(Box.needed("recipe", Holds.TEXT, "paper.box.recipe"));
        for (int i = 1; i <= CARRIERS; i++) {
            boxes.add(Box.optional("carrier." + i, Holds.TEXT, "paper.box.carrier-number", "" + i));
        }
        units(boxes, false);
        return boxes;
    }

    private static List<Box> shipped() {
        List<Box> boxes = new ArrayList<>();
        boxes.add(Box.needed("consignee", Holds.TEXT, "paper.box.consignee"));
        boxes.add(Box.optional("shipment", Holds.TEXT, "paper.box.shipment"));
        units(boxes, true);
        return boxes;
    }

    private static void units(List<Box> boxes, boolean first) {
        for (int i = 1; i <= UNITS; i++) {
            boxes.add(new Box("unit." + i, "paper.box.unit-number", List.of("" + i), Holds.UNIT, first && i == 1));
        }
    }
}
