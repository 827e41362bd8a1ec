package dev.sunthread.station;

import dev.sunthread.kernel.SerialPattern;
import dev.sunthread.kernel.UnitId;
import dev.sunthread.production.UnitName;
import dev.sunthread.scan.ScanChoice;
import dev.sunthread.scan.label.LabelCode;
import dev.sunthread.station.label.Label;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Asks which of several things a scan names; a choice is scanned as the label that names that thing alone. */
final class Choices {

    private Choices() {}

    static Verdict among(List<Label> labels) {
        return Verdict.asked(
                Say.of("which", labels.get(0).called()),
                labels.stream().map(Choices::choice).toList());
    }

    /** Asks whether a text that names nothing was meant for something that is called nearly so. */
    static Verdict nearly(Label.Unknown unknown, List<Label> labels) {
        return new Verdict(
                Verdict.Outcome.ASKED,
                Say.of("near", unknown.called()),
                Say.of("near.remedy"),
                labels.stream().map(Choices::choice).toList(),
                null);
    }

    /** Asks whether a serial that is new was meant for one of the units it is easily taken for. */
    static Verdict orNew(UnitName unit, List<Label> alike) {
        List<Verdict.Choice> choices =
                new ArrayList<>(alike.stream().map(Choices::choice).toList());
        choices.add(newUnit(unit));
        return new Verdict(
                Verdict.Outcome.ASKED, Say.of("near.new", unit.serial()), Say.of("near.new.remedy"), choices, null);
    }

    /** Asks whether a serial is right that looks like none of its item's. */
    static Verdict unlike(UnitName unit, List<SerialPattern> patterns) {
        return new Verdict(
                Verdict.Outcome.ASKED,
                Say.of(
                        "near.unlike",
                        unit.serial(),
                        unit.item(),
                        patterns.stream().map(SerialPattern::text).collect(Collectors.joining(", "))),
                Say.of("near.unlike.remedy"),
                List.of(newUnit(unit)),
                null);
    }

    private static Verdict.Choice newUnit(UnitName unit) {
        return new Verdict.Choice(
                choice(new Label.OfUnit(unit, true)).text(), Say.of("near.new-unit", unit.serial(), unit.item()));
    }

    /** Whether the question was what a text names. */
    static boolean isOfNames(Verdict asked) {
        String key = asked.said().key();
        return key.equals("which") || key.startsWith("near");
    }

    /** What a scanned text was taken for, as it is recorded. */
    static ScanChoice taken(String scanned, Label label) {
        if (label instanceof Label.OfUnit unit) {
            UnitName name = unit.name();
            return new ScanChoice(scanned, ScanChoice.What.UNIT, name.serial(), name.item(), name.issuer());
        }
        if (label instanceof Label.OfMaterial material) {
            ScanChoice.What what = material.container() == null ? ScanChoice.What.LOT : ScanChoice.What.CONTAINER;
            return new ScanChoice(scanned, what, material.called(), null, null);
        }
        ScanChoice.What other = label instanceof Label.OfCarrier
                ? ScanChoice.What.CARRIER
                : label instanceof Label.OfPosition ? ScanChoice.What.POSITION : ScanChoice.What.OTHER;
        return new ScanChoice(scanned, other, label.called(), null, null);
    }

    private static Verdict.Choice choice(Label label) {
        if (label instanceof Label.OfUnit unit) {
            UnitName name = unit.name();
            String text = LabelCode.unit(UnitId.of(name.issuer(), name.item(), name.serial()));
            return new Verdict.Choice(text, Say.of("which.unit", name.serial(), name.item()));
        }
        if (label instanceof Label.OfMaterial material) {
            return material.container() == null
                    ? new Verdict.Choice(LabelCode.lot(material.lot()), Say.of("which.lot", material.lot()))
                    : new Verdict.Choice(
                            LabelCode.container(material.container()),
                            Say.of("which.container", material.container(), material.lot()));
        }
        if (label instanceof Label.OfCarrier carrier) {
            return new Verdict.Choice(LabelCode.carrier(carrier.code()), Say.of("which.carrier", carrier.code()));
        }
        return label instanceof Label.OfPosition position
                ? new Verdict.Choice(
                        LabelCode.position(position.station(), position.code()),
                        Say.of("which.position", position.code()))
                : new Verdict.Choice(label.called(), Say.of("which.equipment", label.called()));
    }
}
