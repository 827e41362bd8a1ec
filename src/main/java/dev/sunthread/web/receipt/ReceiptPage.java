package dev.sunthread.web.receipt;

import java.util.List;

/**
 * A receipt being filled.
 *
 * @param form filled with what the labels say
 * @param labels what was scanned, and how it is read
 * @param items every item that comes in lots, with its unit
 * @param notes what the person should look at, as keys of texts with what they are about
 */
public record ReceiptPage(ReceiptForm form, List<DeliveryLabel> labels, List<LotItem> items, List<Note> notes) {

    /** An item that can be received. */
    public record LotItem(String number, String name, String unit) {}

    /** Something to look at. */
    public record Note(String key, String about) {}
}
