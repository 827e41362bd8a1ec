package dev.sunthread.ledger;

import java.util.List;

/**
 * What the door says of an envelope it took.
 *
 * @param id the envelope's id
 * @param isNew whether it was recorded now, or had been before and nothing was changed
 * @param findings what a person must settle about it
 */
public record Acceptance(String id, boolean isNew, List<RaisedFinding> findings) {}
