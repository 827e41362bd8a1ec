package dev.sunthread.paper.entry;

import java.time.OffsetDateTime;
import java.util.Optional;
import tools.jackson.databind.node.ObjectNode;

/** One happening that a record tells: its kind, when it was, and its body by the fields of the journal. */
record Statement(String kind, Optional<OffsetDateTime> at, ObjectNode body) {}
