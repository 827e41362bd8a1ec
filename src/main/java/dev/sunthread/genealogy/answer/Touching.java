package dev.sunthread.genealogy.answer;

import dev.sunthread.inbox.OpenFinding;
import java.util.List;

/** What waited for a person and touched an answer at its cut-off: findings, and the entries of kept lines. */
public record Touching(List<OpenFinding> findings, List<Long> lines) {}
