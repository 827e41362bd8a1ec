package dev.sunthread.ledger;

import dev.sunthread.kernel.TraceRef;
import java.util.List;

/**
 * A contradiction or breach seen while something was recorded, for a person to settle.
 *
 * @param rule the rule that was broken, by its name
 * @param sentence what is wrong, in words
 * @param remedy what a person can do about it
 * @param about the lots and units it touches
 */
public record RaisedFinding(String rule, String sentence, String remedy, List<TraceRef> about) {}
