package dev.sunthread.web.receipt;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A receipt as far as it is filled.
 *
 * @param id the id of the envelope, given by the page, so that sending twice records once
 * @param scans the labels scanned so far, with pictures instead of separators
 * @param taken for each of these the reading that the person took, or -1
 * @param supplierLots one a line
 * @param expiresOn the last day on which it may be used, {@code YYYY-MM-DD}
 */
public record ReceiptForm(
        @NotBlank String id,
        @Nullable List<String> scans,
        @Nullable List<Integer> taken,

        @NotBlank(message = "{scan.receipt.lot.missing}") @Size(max = 64) @Nullable
        String lot,

        @NotBlank(message = "{scan.receipt.item.missing}") @Nullable
        String item,

        @NotBlank(message = "{scan.receipt.quantity.missing}")
        @Pattern(regexp = "\\s*([0-9]{1,15}(\\.[0-9]{1,9})?)?\\s*", message = "{scan.receipt.quantity.wrong}")
        @Nullable
        String quantity,

        @Size(max = 64) @Nullable String supplier,
        @Size(max = 5000) @Nullable String supplierLots,

        @Pattern(regexp = "([0-9]{4}-[0-9]{2}-[0-9]{2})?", message = "{scan.receipt.expiry.wrong}") @Nullable
        String expiresOn) {

    public ReceiptForm {
        // copies that the binding of the form may fill
        scans = new ArrayList<>(scans == null ? List.of() : scans);
        taken = new ArrayList<>(taken == null ? List.of() : taken);
        while (taken.size() < scans.size()) {
            taken.add(-1);
        }
    }

    static ReceiptForm empty() {
        return new ReceiptForm("page-" + UUID.randomUUID(), null, null, null, null, null, null, null, null);
    }

    /** The same with one more label scanned. */
    ReceiptForm scanned(String text) {
        List<String> more = new ArrayList<>(labels());
        more.add(text);
        return with(more, readings());
    }

    /** The same with the reading of a label that the person took. */
    ReceiptForm took(int label, int reading) {
        List<Integer> chosen = new ArrayList<>(readings());
        if (label >= 0 && label < chosen.size()) {
            chosen.set(label, reading);
        }
        return with(labels(), chosen);
    }

    List<String> labels() {
        return scans == null ? List.of() : scans;
    }

    /** As many as labels. */
    List<Integer> readings() {
        return taken == null ? List.of() : taken;
    }

    private ReceiptForm with(List<String> labels, List<Integer> readings) {
        return new ReceiptForm(id, labels, readings, lot, item, quantity, supplier, supplierLots, expiresOn);
    }

    /** The same, what a person left empty filled with what the labels say. */
    ReceiptForm filled(ReceiptForm said) {
        return new ReceiptForm(
                id,
                scans,
                taken,
                or(lot, said.lot),
                or(item, said.item),
                or(quantity, said.quantity),
                or(supplier, said.supplier),
                or(supplierLots, said.supplierLots),
                or(expiresOn, said.expiresOn));
    }

    private static @Nullable String or(@Nullable String given, @Nullable String said) {
        return given == null || given.isBlank() ? said : given;
    }

    List<String> lotsOfSupplier() {
        return supplierLots == null
                ? List.of()
                : Arrays.stream(supplierLots.split("\\R"))
                        .map(ReceiptForm::stripped)
                        .filter(lot -> !lot.isEmpty())
                        .distinct()
                        .toList();
    }

    static String stripped(@Nullable String text) {
        return text == null ? "" : text.strip().replaceAll("\\s+", " ");
    }
}
