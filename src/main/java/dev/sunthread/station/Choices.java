package dev.sunthread.station;

import dev.sunthread.kernel.UnitId;
import dev.sunthread.production.UnitName;
import dev.sunthread.scan.label.LabelCode;
import dev.sunthread.station.label.Label;
import java.util.List;

/** Asks which of several things a scan names; a choice is scanned as the label that names that thing alone. */
final class Choices {

    private Choices() {}

    static Verdict among(List<Label> labels) {
        return Verdict.asked(
                Say.of("which", labels.get(0).called()),
                labels.stream().map(Choices::choice).toList());
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
