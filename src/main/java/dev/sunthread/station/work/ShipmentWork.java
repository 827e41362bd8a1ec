package dev.sunthread.station.work;

import dev.sunthread.ledger.body.TextForm;
import dev.sunthread.station.Say;
import dev.sunthread.station.label.Label;
import java.time.format.DateTimeFormatter;
import java.util.List;
import org.springframework.stereotype.Component;

/** A shipment: first who it goes to, then its units. */
@Component
class ShipmentWork {

    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss");

    Turn begin() {
        return Turn.accepted(Work.on(Work.Task.SHIPMENT), "ship.to-whom");
    }

    Turn to(Work work, String consignee) {
        return TextForm.CODE.fits(consignee)
                ? Turn.accepted(work.named(consignee), "ship.to", consignee)
                : Turn.refused(work, Say.of("ship.no-consignee"), Say.of("ship.no-consignee.remedy"));
    }

    /** A unit that goes, if nothing forbids it. */
    Turn put(Work work, Label.OfUnit unit, Recording recording) {
        if (work.units().contains(unit.name())) {
            return Turn.refused(work, Say.of("unit.twice", unit.called()), Say.of("unit.twice.remedy"));
        }
        Work more = work.with(unit.name());
        recording.tries("shipment", Bodies.shipment(number(recording), work.called(), List.of(unit.name())));
        return Turn.accepted(more, "ship.put", unit.called(), more.units().size());
    }

    Turn done(Work work, Recording recording) {
        if (work.units().isEmpty()) {
            return Turn.refused(work, Say.of("several.none"), Say.of("several.none.remedy"));
        }
        String number = number(recording);
        recording.record("shipment", Bodies.shipment(number, work.called(), work.units()));
        return Turn.accepted(work.over(), "ship.done", number, work.units().size(), work.called());
    }

    private static String number(Recording recording) {
        return "SH-" + recording.station() + "-" + STAMP.format(recording.at());
    }
}
