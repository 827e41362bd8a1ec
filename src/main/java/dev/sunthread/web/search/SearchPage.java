package dev.sunthread.web.search;

import java.util.List;

/** What a search found: things named exactly so, and things named nearly so, which a person has to choose among. */
public record SearchPage(String text, List<Hit> exact, List<Hit> near) {}
