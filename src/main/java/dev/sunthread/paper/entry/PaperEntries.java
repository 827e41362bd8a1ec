package dev.sunthread.paper.entry;

import dev.sunthread.journal.Imports;
import dev.sunthread.journal.LineOutcome;
import dev.sunthread.journal.LineOutcome.Outcome;
import dev.sunthread.journal.Sender;
import dev.sunthread.ledger.Acceptance;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Entries;
import dev.sunthread.ledger.Envelope;
import dev.sunthread.ledger.EnvelopeHead;
import dev.sunthread.ledger.Manner;
import dev.sunthread.ledger.SaidEntry;
import dev.sunthread.paper.FormEntry;
import dev.sunthread.paper.form.Form;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Enters records that were written on paper, all that one tells in one transaction. The ids are made of the record's id:
 * the same paper entered twice changes nothing, and another paper under the same id goes to the inbox.
 */
@Service
public class PaperEntries {

    private static final String SOURCE = "paper";
    private static final JsonMapper JSON = new JsonMapper();

    private final Statements statements;
    private final Imports imports;
    private final Door door;
    private final Entries entries;
    private final Clock clock;

    PaperEntries(Statements statements, Imports imports, Door door, Entries entries, Clock clock) {
        this.statements = statements;
        this.imports = imports;
        this.door = door;
        this.entries = entries;
        this.clock = clock;
    }

    /**
     * Enters a record. What stands on the same paper is never asked for its meaning again: what it names may mean more by then.
     *
     * @param enteredBy the mark of who enters it
     */
    @Transactional
    public Entered enter(Form form, Filled filled, String enteredBy) {
        Optional<SaidEntry> before = entries.said(filled.id().envelope());
        if (before.isPresent() && isSame(before.get(), form, filled)) {
            return new Entered(false, knownBefore(told(before.get())), List.of());
        }
        Sender sender = new Sender(enteredBy, "paper record " + filled.id().text());
        List<LineOutcome> outcomes = new ArrayList<>();
        for (Statement said : statements.of(form, filled, isOfItsOwnBirth(filled))) {
            taken(line(said, filled, outcomes.size() + 1), sender, outcomes);
        }
        boolean isNew = before.isEmpty();
        return new Entered(
                isNew, outcomes, isNew ? entry(form, filled, outcomes).findings() : List.of());
    }

    // without an end it is dated when it was entered first
    private boolean isSame(SaidEntry before, Form form, Filled filled) {
        OffsetDateTime at = filled.endedAt().orElse(before.occurredAt());
        return entries.holds(envelope(form, filled, at, told(before)));
    }

    private static List<String> told(SaidEntry before) {
        return JSON.readTree(before.envelope())
                .path("body")
                .path("entries")
                .valueStream()
                .map(JsonNode::asString)
                .toList();
    }

    private static List<LineOutcome> knownBefore(List<String> ids) {
        return IntStream.range(0, ids.size())
                .mapToObj(nth -> new LineOutcome(nth + 1, Outcome.KNOWN_BEFORE, ids.get(nth), List.of(), List.of()))
                .toList();
    }

    /** Whether its first happening, as it was entered before, is the birth of its unit. */
    private boolean isOfItsOwnBirth(Filled filled) {
        return entries.named(id(filled, 1))
                .filter(first -> first.kind().equals("birth"))
                .isPresent();
    }

    private void taken(String line, Sender sender, List<LineOutcome> outcomes) {
        try {
            imports.takeLine(line, sender).ifPresent(outcomes::add);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String line(Statement said, Filled filled, int number) {
        ObjectNode line = JsonNodeFactory.instance
                .objectNode()
                .put("id", id(filled, number))
                .put("kind", said.kind())
                .put("version", 1);
        said.at().ifPresent(at -> line.put("occurredAt", EntryTimes.written(at)));
        line.put("actor", filled.actor()).put("source", SOURCE);
        line.set("body", said.body());
        return line.toString();
    }

    private static String id(Filled filled, int number) {
        return filled.id().envelope() + "." + number;
    }

    private Acceptance entry(Form form, Filled filled, List<LineOutcome> outcomes) {
        OffsetDateTime at = filled.endedAt().orElseGet(() -> OffsetDateTime.now(clock));
        List<String> told = outcomes.stream()
                .flatMap(outcome -> Stream.ofNullable(outcome.id()))
                .toList();
        return door.acceptWithin(envelope(form, filled, at, told), Manner.TOLD);
    }

    private static Envelope envelope(Form form, Filled filled, OffsetDateTime at, List<String> told) {
        var head = new EnvelopeHead(filled.id().envelope(), "form-entry", 1, at, filled.actor(), SOURCE);
        var body = new FormEntry(
                filled.id().text(),
                form.kind(),
                form.station(),
                form.item(),
                form.operation(),
                filled.startedAt().orElse(null),
                filled.seconds(),
                form.boxes().stream()
                        .flatMap(box ->
                                filled.in(box.name()).stream().map(text -> FormEntry.Written.of(box.name(), text)))
                        .toList(),
                told);
        return Envelope.of(head, body);
    }
}
