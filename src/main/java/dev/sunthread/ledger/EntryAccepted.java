package dev.sunthread.ledger;

import java.util.List;

/** An entry was recorded with findings; published within the door's transaction. */
public record EntryAccepted(long entry, List<RaisedFinding> findings) {}
