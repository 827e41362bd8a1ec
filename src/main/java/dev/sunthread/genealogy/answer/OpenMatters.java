package dev.sunthread.genealogy.answer;

import dev.sunthread.inbox.Findings;
import dev.sunthread.inbox.Lines;
import dev.sunthread.kernel.TraceRef;
import java.util.Collection;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.springframework.stereotype.Component;

/** Finds what waits for a person and touches an answer. */
@Component
public class OpenMatters {

    private final Findings findings;
    private final Lines lines;

    public OpenMatters(Findings findings, Lines lines) {
        this.findings = findings;
        this.lines = lines;
    }

    /** Findings that touch any of these nodes, and kept lines that name any of these suspects or gave a reason. */
    public Touching touching(Collection<TraceRef> nodes, List<String> suspects, Collection<Long> reasons, long cutoff) {
        SortedSet<Long> touching = new TreeSet<>(reasons);
        touching.addAll(lines.naming(suspects, cutoff));
        return new Touching(findings.touching(nodes, cutoff), List.copyOf(touching));
    }
}
