package dev.sunthread.genealogy.records;

/**
 * What history tells as known at one cut-off, with the uncertainty of clocks put to every time. Nothing in it is
 * concluded here. A reading may give more than was asked for, never less.
 */
public record Records(
        HappeningRecords happenings,
        UseRecords uses,
        PlacementRecords placements,
        LotRecords lots,
        DemandRecords demands,
        SignRecords signs,
        LineRecords lines) {}
