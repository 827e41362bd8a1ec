package dev.sunthread.scan.meaning;

import java.util.List;

/** What kind of thing a label names. */
public enum Thing {
    COMMAND(Meaning.COMMAND),
    BADGE(Meaning.BADGE),
    POSITION(Meaning.POSITION),
    STATION(Meaning.STATION),
    CARRIER(Meaning.CARRIER),
    CONTAINER(Meaning.CONTAINER),
    UNIT(Meaning.SERIAL),
    LOT(Meaning.LOT),
    SUPPLIER_LOT(Meaning.SUPPLIER_LOT),
    PACKAGE(Meaning.PACKAGE),
    ITEM(Meaning.ITEM, Meaning.TRADE_ITEM, Meaning.SUPPLIER_ITEM),
    QUANTITY(Meaning.QUANTITY),
    EXPIRY(Meaning.EXPIRY),
    NAME(Meaning.NAME),
    NOTHING_KNOWN;

    private final List<Meaning> saidBy;

    Thing(Meaning... saidBy) {
        this.saidBy = List.of(saidBy);
    }

    public boolean isSaidBy(Meaning meaning) {
        return saidBy.contains(meaning);
    }

    /** What the first of these, in their order, that any field says. */
    static Thing of(List<Element> elements) {
        for (Thing thing : values()) {
            if (elements.stream().anyMatch(element -> thing.saidBy.contains(element.meaning()))) {
                return thing;
            }
        }
        return NOTHING_KNOWN;
    }
}
