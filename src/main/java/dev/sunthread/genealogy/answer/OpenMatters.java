package dev.sunthread.genealogy.answer;

import dev.sunthread.inbox.Findings;
import dev.sunthread.inbox.Lines;
import dev.sunthread.kernel.TraceRef;
import java.util.Collection;
import java.util.List;
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

    /** Findings that touch any of these nodes, and kept lines that name any of these suspects. */
    public Touching touching(Collection<TraceRef> nodes, List<String> suspects, long cutoff) {
        return new Touching(findings.touching(nodes, cutoff), lines.naming(suspects, cutoff));
    }
}
