package dev.sunthread.demo.told;

import dev.sunthread.ledger.Envelope;
import dev.sunthread.ledger.EnvelopeHead;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import tools.jackson.databind.node.ObjectNode;

/** Takes down what the plant tells, in any order, and gives it in the order of recording. */
public final class Notebook {

    /** What was told, and when it was recorded. */
    public record Line(OffsetDateTime recordedAt, Envelope envelope) {}

    /** A time in which what was said somewhere did not arrive; it was recorded afterwards. */
    private record Outage(String source, OffsetDateTime from, OffsetDateTime to) {

        boolean covers(String source, OffsetDateTime at) {
            return this.source.equals(source) && !at.isBefore(from) && at.isBefore(to);
        }
    }

    private final List<Line> lines = new ArrayList<>();
    private final List<Outage> outages = new ArrayList<>();
    private final Map<String, Integer> toldFrom = new HashMap<>();
    private final Random random;

    public Notebook(Random random) {
        this.random = random;
    }

    /** Someone who tells from a station, an office or a scanner. */
    public Teller teller(String actor, String source) {
        return new Teller(this, actor, source);
    }

    /** A whole number between two bounds, both included. */
    public int between(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    /** True once in so many times. */
    public boolean onceIn(int times) {
        return random.nextInt(times) == 0;
    }

    /** From now on, what is said at the source in this time is recorded after it. */
    public void cutOff(String source, OffsetDateTime from, OffsetDateTime to) {
        outages.add(new Outage(source, from, to));
    }

    /** When something said at the source then is recorded. */
    OffsetDateTime recordedAt(String source, OffsetDateTime at) {
        return outages.stream()
                .filter(outage -> outage.covers(source, at))
                .findFirst()
                .map(outage -> outage.to().plusSeconds(30 + 2L * (1 + lines.size() % 200)))
                .orElseGet(() -> at.plusSeconds(between(1, 4)));
    }

    public String nextId(String source) {
        return source + "-%05d".formatted(toldFrom.merge(source, 1, Integer::sum));
    }

    public void add(EnvelopeHead head, ObjectNode body, OffsetDateTime recordedAt) {
        lines.add(new Line(recordedAt, Envelope.of(head, body)));
    }

    /** Everything told, by when it was recorded; what was recorded together stays as told. */
    public List<Line> inOrderOfRecording() {
        return lines.stream()
                .sorted(Comparator.comparing(line -> line.recordedAt().toInstant()))
                .toList();
    }
}
