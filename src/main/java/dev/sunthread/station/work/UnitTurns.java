package dev.sunthread.station.work;

import dev.sunthread.station.label.Command;
import dev.sunthread.station.label.Label;
import org.springframework.stereotype.Component;

/** What a scan does to units: one in hand, several together, or one on which something is done again. */
@Component
class UnitTurns {

    private final UnitWork units;
    private final SeveralWork several;
    private final AgainWork again;

    UnitTurns(UnitWork units, SeveralWork several, AgainWork again) {
        this.units = units;
        this.several = several;
        this.again = again;
    }

    Turn of(Work work, Label label, Recording recording) {
        if (label instanceof Label.OfUnit unit) {
            return ofUnit(work, unit, recording);
        }
        if (work.task() == Work.Task.UNITS && label instanceof Label.OfMaterial taken) {
            return units.take(work, taken, recording);
        }
        return work.task() == Work.Task.AGAIN && label instanceof Label.OfOperation chosen
                ? again.chosen(work, chosen, recording)
                : Turn.notNow(work, label);
    }

    private Turn ofUnit(Work work, Label.OfUnit unit, Recording recording) {
        return switch (work.task()) {
            case NOTHING -> units.begin(work, unit, recording);
            case UNITS -> units.putIn(work, unit, recording);
            case SEVERAL -> several.collect(work, unit, recording);
            case AGAIN -> again.on(unit, recording);
            default -> Turn.notNow(work, unit);
        };
    }

    /** Begins with several units or with one again, or says that the several are complete. */
    Turn told(Work work, Label.OfCommand told, Recording recording) {
        if (work.task() == Work.Task.SEVERAL && told.command() == Command.DONE) {
            return several.collected(work, recording);
        }
        if (work.task() != Work.Task.NOTHING) {
            return Turn.notNow(work, told);
        }
        return told.command() == Command.AGAIN
                ? again.begin()
                : Turn.accepted(Work.on(Work.Task.SEVERAL), "several.begin");
    }
}
