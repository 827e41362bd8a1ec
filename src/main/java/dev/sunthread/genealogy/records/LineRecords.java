package dev.sunthread.genealogy.records;

import dev.sunthread.kernel.TraceRef;
import java.util.List;
import java.util.Map;

/** Reads the kept lines that no person has settled. */
public interface LineRecords {

    List<OpenLine> open();

    /** What nothing but open lines names, by the nodes that stand for it; their numbers are less than nought. */
    Map<TraceRef, String> strangers();
}
