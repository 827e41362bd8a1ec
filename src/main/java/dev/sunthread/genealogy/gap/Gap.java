package dev.sunthread.genealogy.gap;

import dev.sunthread.genealogy.demand.RunDemand;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * One set of candidates, any of which may be what some records lack. Its number follows from the set, so that both
 * directions of a walk, and every instance of the application, mean the same node by it.
 */
final class Gap {

    /** What may have been it, and from when to when. */
    record Candidate(TraceRef node, Moment from, Moment to) {}

    static final Set<TraceKind> KINDS = Set.of(TraceKind.GAP, TraceKind.INSIDE_GAP, TraceKind.AROUND_GAP);

    private final Set<Long> items;
    private final Set<RunDemand> runs;
    private final List<Candidate> candidates;
    private final Map<TraceRef, List<Candidate>> byNode;
    private final Set<Lack> lacks = new HashSet<>();
    private final Map<TraceRef, List<Lack>> byParent = new HashMap<>();
    private final long number;

    Gap(Lack lack, List<Candidate> candidates) {
        this.items = lack.items();
        this.runs = lack.runs();
        this.candidates = candidates.stream()
                .sorted(Comparator.comparing(Candidate::node)
                        .thenComparing(one -> one.from().early()))
                .toList();
        this.byNode = this.candidates.stream().collect(Collectors.groupingBy(Candidate::node));
        this.number = number(lack.isOfChild()
                + (lack.isOfTray() ? " on a tray " : " ")
                + new TreeSet<>(items)
                + runs
                + this.candidates);
    }

    TraceRef node() {
        return new TraceRef(TraceKind.GAP, number);
    }

    /** The same candidates, as what may have been inside while something acted on the parent. */
    TraceRef inside() {
        return new TraceRef(TraceKind.INSIDE_GAP, number);
    }

    /** What a candidate may have been in while something acted on the candidate. */
    TraceRef around() {
        return new TraceRef(TraceKind.AROUND_GAP, number);
    }

    boolean isOfChild() {
        return !byParent.isEmpty();
    }

    Set<Long> items() {
        return items;
    }

    Set<RunDemand> runs() {
        return runs;
    }

    List<Candidate> candidates() {
        return candidates;
    }

    /** What this node tells of itself as a candidate: from when to when it may have been it. */
    List<Candidate> candidates(TraceRef node) {
        return byNode.getOrDefault(node, List.of());
    }

    void add(Lack lack) {
        if (lacks.add(lack) && lack.isOfChild()) {
            byParent.computeIfAbsent(lack.parent(), any -> new ArrayList<>()).add(lack);
        }
    }

    Set<Lack> lacks() {
        return lacks;
    }

    /** The children that this parent lacks. */
    List<Lack> lacks(TraceRef parent) {
        return byParent.getOrDefault(parent, List.of());
    }

    private static long number(String spelled) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(spelled.getBytes(StandardCharsets.UTF_8));
            return ByteBuffer.wrap(hash).getLong();
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
