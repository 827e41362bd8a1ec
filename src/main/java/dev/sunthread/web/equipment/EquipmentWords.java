package dev.sunthread.web.equipment;

import dev.sunthread.catalog.FoundError;
import dev.sunthread.kernel.verdict.Phrase;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What checks of equipment found, in words. */
final class EquipmentWords {

    private EquipmentWords() {}

    static Phrase of(FoundError error) {
        Phrase quantity =
                switch (error.quantity()) {
                    case TEMPERATURE -> Phrase.of("judging.reads.temperature");
                    case IRRADIANCE -> Phrase.of("judging.reads.irradiance");
                    case HUMIDITY -> Phrase.of("judging.reads.humidity");
                    case CURRENT -> Phrase.of("judging.reads.current");
                    case VOLTAGE -> Phrase.of("judging.reads.voltage");
                };
        Phrase what = error.sensor() == null ? quantity : Phrase.of("judged.quantity", error.sensor(), quantity);
        return Phrase.of(
                error.onset() == FoundError.Onset.ALWAYS ? "equipment.reads-always" : "equipment.reads",
                what,
                amount(error));
    }

    private static Phrase amount(FoundError error) {
        BigDecimal percent = error.percent();
        if (percent != null) {
            return Phrase.of("judged.quantity", percent.toPlainString(), "%");
        }
        String unit =
                switch (error.quantity()) {
                    case TEMPERATURE -> "K";
                    case IRRADIANCE -> "mW/cm2";
                    case HUMIDITY -> "%RH";
                    case CURRENT -> "A";
                    case VOLTAGE -> "V";
                };
        return Phrase.of("judged.quantity", String.valueOf(error.offset()), unit);
    }

    static List<Phrase> radiometer(
            @Nullable BigDecimal irradiance, @Nullable String band, @Nullable BigDecimal lampHours) {
        List<Phrase> read = new ArrayList<>();
        if (irradiance != null) {
            read.add(
                    band == null
                            ? Phrase.of("judged.quantity", irradiance.toPlainString(), "mW/cm2")
                            : Phrase.of("equipment.read-in-band", irradiance.toPlainString(), band));
        }
        if (lampHours != null) {
            read.add(Phrase.of("equipment.lamp", lampHours.toPlainString()));
        }
        return read;
    }
}
