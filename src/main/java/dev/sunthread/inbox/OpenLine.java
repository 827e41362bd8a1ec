package dev.sunthread.inbox;

import java.time.OffsetDateTime;
import java.util.List;

/** A kept line that no person settled yet, named by the envelope that keeps it. */
public record OpenLine(
        String entry,
        String file,
        long lineNumber,
        OffsetDateTime keptAt,
        String text,
        List<KeptLine.Problem> problems) {}
