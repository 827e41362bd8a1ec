package dev.sunthread.genealogy.records;

import java.util.List;

/** Reads the kept lines that no person has settled. */
public interface LineRecords {

    List<OpenLine> open();
}
