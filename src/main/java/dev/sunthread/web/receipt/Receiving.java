package dev.sunthread.web.receipt;

import dev.sunthread.access.Callers;
import dev.sunthread.kernel.Refused;
import dev.sunthread.scan.ScanChoice;
import dev.sunthread.scan.ScanChoices;
import dev.sunthread.scan.meaning.Meaning;
import dev.sunthread.web.PageDoor;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Records a confirmed receipt through the door, with what the person chose where a label was in doubt. */
@Service
class Receiving {

    private final PageDoor door;
    private final ScanChoices choices;
    private final ReceiptPages pages;
    private final Callers callers;
    private final ZoneId zone;

    Receiving(PageDoor door, ScanChoices choices, ReceiptPages pages, Callers callers, ZoneId zone) {
        this.door = door;
        this.choices = choices;
        this.pages = pages;
        this.callers = callers;
        this.zone = zone;
    }

    /** Records the receipt and the choices, or nothing. @throws Refused as the door does */
    @Transactional
    public void receive(ReceiptForm form) {
        door.say(form.id(), "receipt", body(form));
        String actor = callers.signedIn().mark();
        List<ScanChoice> chosen = chosen(form);
        for (int i = 0; i < chosen.size(); i++) {
            choices.chosen(form.id() + "-choice-" + (i + 1), actor, "page", chosen.get(i));
        }
    }

    private ObjectNode body(ReceiptForm form) {
        String item = ReceiptForm.stripped(form.item());
        ObjectNode body = JsonNodeFactory.instance.objectNode();
        body.put("lot", ReceiptForm.stripped(form.lot()));
        body.put("item", item);
        body.put("quantity", ReceiptForm.stripped(form.quantity()));
        body.put("unitOfMeasure", pages.unitOf(item));
        String supplier = ReceiptForm.stripped(form.supplier());
        if (!supplier.isEmpty()) {
            body.put("supplier", supplier);
        }
        var supplierLots = body.putArray("supplierLots");
        form.lotsOfSupplier().forEach(supplierLots::add);
        String expiresOn = ReceiptForm.stripped(form.expiresOn());
        if (!expiresOn.isEmpty()) {
            body.put("expiresAt", endOf(expiresOn));
        }
        return body;
    }

    /** By common practice a label's day of expiry is the last on which the material may be used. */
    private String endOf(String day) {
        try {
            OffsetDateTime end =
                    LocalDate.parse(day).plusDays(1).atStartOfDay(zone).toOffsetDateTime();
            return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(end);
        } catch (DateTimeException e) {
            throw new Refused("\"" + day + "\" is not a day", "Give the day of expiry as it stands on the label");
        }
    }

    private List<ScanChoice> chosen(ReceiptForm form) {
        Delivery delivery = pages.delivery(form);
        List<ScanChoice> chosen = new ArrayList<>();
        for (DeliveryLabel label : delivery.labels()) {
            if (label.isChosen()) {
                label.reading()
                        .ifPresent(reading -> chosen.add(
                                choice(label.scanned().text(), ScanChoice.What.READING, ReadingText.of(reading))));
            }
        }
        String item = ReceiptForm.stripped(form.item());
        if (!pages.named(delivery).contains(item)) {
            ReceiptPages.numbers(delivery).forEach(number -> chosen.add(choice(number, ScanChoice.What.ITEM, item)));
        }
        for (String scanned : delivery.values(Meaning.SUPPLIER_LOT)) {
            pages.takenFor(scanned, form.lotsOfSupplier())
                    .ifPresent(lot -> chosen.add(choice(scanned, ScanChoice.What.SUPPLIER_LOT, lot)));
        }
        return chosen;
    }

    private static ScanChoice choice(String scanned, ScanChoice.What what, String name) {
        return new ScanChoice(scanned, what, name, null, null);
    }
}
