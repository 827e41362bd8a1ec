package dev.sunthread.station.work;

import dev.sunthread.station.label.Label;
import org.springframework.stereotype.Component;

/** What a scan does, by what is in hand and what was scanned. */
@Component
public class Turns {

    private final UnitTurns units;
    private final MaterialWork material;
    private final CarrierWork carriers;
    private final RunWork runs;
    private final ShipmentWork shipments;

    Turns(UnitTurns units, MaterialWork material, CarrierWork carriers, RunWork runs, ShipmentWork shipments) {
        this.units = units;
        this.material = material;
        this.carriers = carriers;
        this.runs = runs;
        this.shipments = shipments;
    }

    /** @throws dev.sunthread.kernel.Refused if a rule forbids what the scan asks for */
    public Turn of(Work work, Label label, Recording recording) {
        if (label instanceof Label.OfCommand command) {
            return told(work, command, recording);
        }
        return switch (work.task()) {
            case NOTHING -> begin(work, label, recording);
            case UNITS, SEVERAL, AGAIN -> units.of(work, label, recording);
            case MATERIAL ->
                label instanceof Label.OfPosition position
                        ? material.loadAt(work, position, recording)
                        : Turn.notNow(work, label);
            case POSITION ->
                label instanceof Label.OfMaterial put ? material.put(work, put, recording) : Turn.notNow(work, label);
            case CARRIER -> onCarrier(work, label, recording);
            case RUN -> onRun(work, label, recording);
            case SHIPMENT -> onShipment(work, label, recording);
        };
    }

    private Turn begin(Work work, Label label, Recording recording) {
        if (label instanceof Label.OfUnit) {
            return units.of(work, label, recording);
        }
        if (label instanceof Label.OfMaterial put) {
            return material.begin(work, put, recording);
        }
        if (label instanceof Label.OfPosition position) {
            return material.at(work, position, recording);
        }
        if (label instanceof Label.OfCarrier carrier) {
            return carriers.begin(carrier, recording);
        }
        return label instanceof Label.OfEquipment equipment ? runs.begin(equipment) : Turn.notNow(work, label);
    }

    private Turn onCarrier(Work work, Label label, Recording recording) {
        if (label instanceof Label.OfUnit unit) {
            return carriers.put(work, unit, recording);
        }
        return label instanceof Label.OfCarrier inner ? carriers.put(work, inner, recording) : Turn.notNow(work, label);
    }

    private Turn onRun(Work work, Label label, Recording recording) {
        if (label instanceof Label.OfCarrier carrier) {
            return runs.put(work, carrier, recording);
        }
        if (label instanceof Label.OfEquipment equipment && equipment.code().equals(work.name())) {
            return work.since() == null ? runs.start(work, recording) : runs.labelled(work, recording);
        }
        return label instanceof Label.OfUnit unit ? runs.put(work, unit, recording) : Turn.notNow(work, label);
    }

    private Turn onShipment(Work work, Label label, Recording recording) {
        if (work.name() == null && !(label instanceof Label.OfUnit)) {
            return shipments.to(work, label.called());
        }
        return work.name() != null && label instanceof Label.OfUnit unit
                ? shipments.put(work, unit, recording)
                : Turn.notNow(work, label);
    }

    private Turn told(Work work, Label.OfCommand told, Recording recording) {
        return switch (told.command()) {
            case CANCEL -> Turn.accepted(work.over(), "cancelled");
            case SEVERAL, AGAIN -> units.told(work, told, recording);
            case SHIP -> work.task() == Work.Task.NOTHING ? shipments.begin() : Turn.notNow(work, told);
            case START ->
                work.task() == Work.Task.RUN && work.since() == null
                        ? runs.start(work, recording)
                        : Turn.notNow(work, told);
            case END -> work.task() == Work.Task.RUN ? runs.end(work, recording) : Turn.notNow(work, told);
            case OFF -> off(work, told, recording);
            case CLEAN -> work.task() == Work.Task.POSITION ? material.clean(work, recording) : Turn.notNow(work, told);
            case DONE -> done(work, told, recording);
            case UNDO, PASS -> Turn.notNow(work, told);
        };
    }

    private Turn off(Work work, Label.OfCommand told, Recording recording) {
        return switch (work.task()) {
            case POSITION -> material.off(work, recording);
            case CARRIER -> carriers.clear(work, recording);
            default -> Turn.notNow(work, told);
        };
    }

    private Turn done(Work work, Label.OfCommand told, Recording recording) {
        return switch (work.task()) {
            case SEVERAL -> units.told(work, told, recording);
            case SHIPMENT -> shipments.done(work, recording);
            case CARRIER, POSITION -> Turn.accepted(work.over(), "put-aside");
            default -> Turn.notNow(work, told);
        };
    }
}
