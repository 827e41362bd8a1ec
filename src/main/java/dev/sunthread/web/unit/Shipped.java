package dev.sunthread.web.unit;

import java.time.OffsetDateTime;

/** A shipment that a unit was in, itself or inside the unit named. */
public record Shipped(
        String number,
        String consignee,
        OffsetDateTime at,
        String item,
        String serial,
        String issuer,
        boolean itself) {}
