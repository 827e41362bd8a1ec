package dev.sunthread.genealogy;

/**
 * What history tells as known at one cut-off, with the uncertainty of clocks put to every time. Nothing in it is
 * concluded: {@link HistoryEdges} concludes. A reading may give more than was asked for, never less.
 */
record Records(
        HappeningRecords happenings,
        UseRecords uses,
        PlacementRecords placements,
        LotRecords lots,
        DemandRecords demands,
        SignRecords signs,
        LineRecords lines) {}
