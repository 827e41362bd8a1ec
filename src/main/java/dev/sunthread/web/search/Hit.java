package dev.sunthread.web.search;

import dev.sunthread.scan.ScanChoice;

/**
 * Something that a searched text may mean.
 *
 * @param what the kind of thing, in words
 * @param name its name as recorded
 * @param address the page that shows it
 * @param why why it is offered
 * @param taken the choice that takes a scanned text for it, its text left empty
 */
public record Hit(String what, String name, String address, String why, ScanChoice taken) {}
