package dev.sunthread.scan.meaning;

/** What one field of a label says. */
public enum Meaning {
    /** A bare name; only the record tells what it names. */
    NAME,
    /** The plant's own number of an item, also where a supplier prints it as the customer's part number. */
    ITEM,
    /** A trade item number (GTIN). */
    TRADE_ITEM,
    SUPPLIER_ITEM,
    REVISION,
    SERIAL,
    /** The plant's own number of a lot. */
    LOT,
    SUPPLIER_LOT,
    CONTAINER,
    /** A package in transport, such as one with an SSCC. */
    PACKAGE,
    CARRIER,
    QUANTITY,
    EXPIRY,
    PRODUCED,
    SUPPLIER,
    ORDER,
    DELIVERY,
    ORIGIN,
    STATION,
    POSITION,
    BADGE,
    COMMAND,
    OTHER
}
