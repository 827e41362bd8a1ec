package dev.sunthread.web.inbox;

import dev.sunthread.inbox.OpenFinding;
import java.util.List;

/**
 * An open finding with what it touches.
 *
 * @param settlement the id that its settlement will have, so that sending twice settles once
 */
public record FindingRow(OpenFinding finding, List<FindingSubject> subjects, String settlement) {}
