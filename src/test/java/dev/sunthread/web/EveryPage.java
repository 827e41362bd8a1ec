package dev.sunthread.web;

import java.util.List;
import java.util.Set;

/** An address of every kind of page of the small plant with stock and runs, but of pages of things it does not have. */
final class EveryPage {

    static final List<String> OF_THE_SMALL_PLANT = List.of(
            "/",
            "/search?q=R0",
            "/unit?item=RCV&serial=R0001",
            "/unit?item=WALL&serial=W/1&built=ever",
            "/unit?item=RCV&serial=R0009",
            "/lot?number=A-17",
            "/container?label=C/1",
            "/trace",
            "/trace?way=forward&lot=A-17",
            "/trace?way=backward&item=WALL&serial=W/1",
            "/trace?lot=none",
            "/trace/flow?way=forward&lot=A-17",
            "/trace/window?station=BOND&position=V1",
            "/compare/units?leftItem=RCV&leftSerial=R0001&rightItem=RCV&rightSerial=R0002",
            "/compare/answers",
            "/compare/joined?of=%5B%7B%22lot%22:%22A-17%22%7D,%7B%22lot%22:%22A-18%22%7D%5D",
            "/stations",
            "/stations/behind",
            "/station?code=BOND",
            "/position?station=BOND&code=V1",
            "/cure-run?name=C/1",
            "/test-run?name=T-1",
            "/equipment?name=OVEN",
            "/carrier?name=TRAY%201",
            "/journal",
            "/inbox",
            "/inbox/file?name=shift.ndjson",
            "/findings",
            "/holds",
            "/waiting",
            "/expiring",
            "/in-process",
            "/receipts/new",
            "/labels?of=lot&name=A-17",
            "/labels/commands",
            "/labels/next",
            "/journal/raw",
            "/judgings",
            "/values",
            "/people",
            "/tokens",
            "/access-log",
            "/device",
            "/account",
            "/work",
            "/work/damaged",
            "/forms",
            "/work/damaged",
            "/forms/new?station=BOND",
            "/forms/sheet?code=7K3QM",
            "/forms/record?id=7K3QM-22-V",
            "/forms/record?id=7K3QM-24-R&station=BOND&what=CHARGE",
            "/no-such-page");

    /** Pages for those who are not signed in, and of kept lines, issued serials, jobs, values and people. */
    static final Set<String> ELSEWHERE = Set.of(
            "/sign-in", "/badge", "/inbox/line", "/labels/issued", "/judging", "/value", "/person", "/work/shell");

    private EveryPage() {}
}
