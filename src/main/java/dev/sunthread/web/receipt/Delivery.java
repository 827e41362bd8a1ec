package dev.sunthread.web.receipt;

import dev.sunthread.scan.meaning.Amount;
import dev.sunthread.scan.meaning.Element;
import dev.sunthread.scan.meaning.Meaning;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** All that the labels of a delivery say together. */
public record Delivery(List<DeliveryLabel> labels) {

    List<Element> all(Meaning meaning) {
        return labels.stream()
                .flatMap(label -> label.reading().stream())
                .flatMap(reading -> reading.all(meaning).stream())
                .toList();
    }

    List<String> values(Meaning meaning) {
        return all(meaning).stream()
                .map(Element::value)
                .filter(value -> !value.isEmpty())
                .distinct()
                .toList();
    }

    /** The one value that the labels say; empty if they say none or several. */
    Optional<String> value(Meaning meaning) {
        List<String> values = values(meaning);
        return values.size() == 1 ? Optional.of(values.get(0)) : Optional.empty();
    }

    /** The one quantity that the labels say; empty if they say none or several. */
    Optional<Amount> amount() {
        List<Amount> amounts = all(Meaning.QUANTITY).stream()
                .map(Element::amount)
                .filter(Objects::nonNull)
                .distinct()
                .toList();
        return amounts.size() == 1 ? Optional.of(amounts.get(0)) : Optional.empty();
    }

    /** The earliest day of expiry that the labels say. */
    Optional<LocalDate> expiry() {
        return all(Meaning.EXPIRY).stream()
                .map(Element::date)
                .filter(Objects::nonNull)
                .min(LocalDate::compareTo);
    }
}
