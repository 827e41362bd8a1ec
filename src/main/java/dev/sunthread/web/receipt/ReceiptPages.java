package dev.sunthread.web.receipt;

import dev.sunthread.catalog.Items;
import dev.sunthread.scan.Scans;
import dev.sunthread.scan.meaning.Meaning;
import dev.sunthread.web.receipt.ReceiptPage.LotItem;
import dev.sunthread.web.receipt.ReceiptPage.Note;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** Fills a receipt from scanned labels; what is in doubt stays empty, with a note. */
@Service
class ReceiptPages {

    private final Scans scans;
    private final ReceivableItems items;
    private final Items released;

    ReceiptPages(Scans scans, ReceivableItems items, Items released) {
        this.scans = scans;
        this.released = released;
        this.items = items;
    }

    ReceiptPage fill(ReceiptForm form) {
        Delivery delivery = delivery(form);
        List<LotItem> all = items.all();
        List<Note> notes = new ArrayList<>();
        Optional<LotItem> item = item(form, delivery, all, notes);
        ReceiptForm filled = form.filled(said(delivery, item, notes));
        noteNearSupplierLots(delivery, notes);
        return new ReceiptPage(filled, delivery.labels(), all, notes);
    }

    /** What the labels of a form say. */
    Delivery delivery(ReceiptForm form) {
        List<String> texts = form.labels();
        List<Integer> taken = form.readings();
        return new Delivery(IntStream.range(0, texts.size())
                .mapToObj(i -> new DeliveryLabel(scans.read(texts.get(i)), taken.get(i)))
                .toList());
    }

    /** The items that labels name, by the plant's own number or another's. */
    List<String> named(Delivery delivery) {
        return delivery.labels().stream()
                .flatMap(label -> label.reading().stream())
                .flatMap(reading -> scans.items(reading).stream())
                .distinct()
                .toList();
    }

    /** Every number by which the labels name an item. */
    static List<String> numbers(Delivery delivery) {
        return delivery.labels().stream()
                .flatMap(label -> label.reading().stream())
                .flatMap(reading -> Scans.itemNumbers(reading).stream())
                .distinct()
                .toList();
    }

    /** The unit of an item's quantities. @throws Unreadable if it is not released */
    String unitOf(String item) {
        return released.named(item, "body.item").unitOfMeasure();
    }

    /** Of the supplier lots that the person gave, the one nearly spelled as the scanned one, which is not among them. */
    Optional<String> takenFor(String scanned, List<String> given) {
        return given.contains(scanned)
                ? Optional.empty()
                : items.nearSupplierLots(scanned).stream()
                        .filter(given::contains)
                        .findFirst();
    }

    private Optional<LotItem> item(ReceiptForm form, Delivery delivery, List<LotItem> all, List<Note> notes) {
        List<String> named = named(delivery);
        if (named.size() > 1) {
            notes.add(new Note("scan.receipt.items.several", String.join(", ", named)));
        } else if (named.isEmpty()) {
            numbers(delivery).forEach(number -> noteUnknownItem(number, notes));
        }
        String chosen = ReceiptForm.stripped(form.item());
        String number = chosen.isEmpty() && named.size() == 1 ? named.get(0) : chosen;
        return all.stream().filter(item -> item.number().equals(number)).findFirst();
    }

    private void noteUnknownItem(String number, List<Note> notes) {
        notes.add(new Note("scan.receipt.item.unknown", number));
        List<String> near = items.near(number);
        if (!near.isEmpty()) {
            notes.add(new Note("scan.receipt.item.near", String.join(", ", near)));
        }
    }

    private void noteNearSupplierLots(Delivery delivery, List<Note> notes) {
        for (String lot : delivery.values(Meaning.SUPPLIER_LOT)) {
            List<String> near = items.nearSupplierLots(lot);
            if (!near.isEmpty()) {
                notes.add(new Note("scan.receipt.supplierLot.near", String.join(", ", near)));
            }
        }
    }

    private static ReceiptForm said(Delivery delivery, Optional<LotItem> item, List<Note> notes) {
        return new ReceiptForm(
                "",
                null,
                null,
                delivery.value(Meaning.LOT).orElse(null),
                item.map(LotItem::number).orElse(null),
                quantity(delivery, item, notes),
                delivery.value(Meaning.SUPPLIER).orElse(null),
                String.join("\n", delivery.values(Meaning.SUPPLIER_LOT)),
                delivery.expiry().map(Object::toString).orElse(null));
    }

    private static @Nullable String quantity(Delivery delivery, Optional<LotItem> item, List<Note> notes) {
        List<String> printed = delivery.values(Meaning.QUANTITY);
        Optional<String> quantity =
                item.flatMap(known -> delivery.amount().flatMap(amount -> Measures.in(known.unit(), amount)));
        if (item.isPresent() && !printed.isEmpty() && quantity.isEmpty()) {
            notes.add(new Note("scan.receipt.quantity.check", String.join(", ", printed)));
        }
        return quantity.orElse(null);
    }
}
