package dev.sunthread.materials.stock;

import java.util.Locale;

/** The acts that are recorded of the stock of a lot. */
enum StockWay {
    COUNT("All that was left of a lot in the plant, or in one container of it, was counted."),
    ISSUE("A quantity of a lot was given out of the store; it is still in the plant."),
    STOCK_RETURN("A quantity of a lot that was given out came back to the store."),
    WASTE("A quantity of a lot was thrown away."),
    SAMPLE("A quantity of a lot was taken for inspection and does not come back.");

    private final String meaning;

    StockWay(String meaning) {
        this.meaning = meaning;
    }

    String meaning() {
        return meaning;
    }

    /** The word for it in envelopes. */
    String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
