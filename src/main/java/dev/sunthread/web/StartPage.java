package dev.sunthread.web;

import java.util.List;

/** What the start page shows: what waits for a person, and what happened last. */
public record StartPage(long openFindings, long openLines, long openHolds, List<Happening> latest) {}
