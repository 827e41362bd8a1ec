package dev.sunthread.genealogy;

import java.util.List;

/** One page of an answer's lines, and how many lines the filter leaves in all. */
public record LinePage(List<AnswerLine> lines, long total, int page, int size) {}
