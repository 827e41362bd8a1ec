package dev.sunthread.genealogy;

import java.util.List;

/** Reads the kept lines that no person has settled. */
interface LineRecords {

    List<OpenLine> open();
}
