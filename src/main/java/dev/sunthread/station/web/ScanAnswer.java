package dev.sunthread.station.web;

import dev.sunthread.station.Scan;
import jakarta.servlet.http.HttpServletResponse;

/** What tells a page that its scan was taken: only an answer that names the scan does, whatever else comes on its way. */
final class ScanAnswer {

    private static final String TAKEN = "X-Scan-Taken";

    private ScanAnswer() {}

    static void taken(HttpServletResponse answer, Scan scan) {
        answer.setHeader(TAKEN, scan.id());
    }
}
