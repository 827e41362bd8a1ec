package dev.sunthread.genealogy.gap;

import dev.sunthread.genealogy.demand.RunDemand;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One set of candidates, any of which may be what some records lack. Its number follows from the set, so that both
 * directions of a walk, and every instance of the application, mean the same node by it.
 */
final class Gap {

    /** What may have been it, and from when to when. */
    record Candidate(TraceRef node, Moment from, Moment to) {

        /** From its first instant to its last, both included. */
        Moment time() {
            long first = from.early();
            return new Moment(first, Math.max(first, to.justBefore().late()));
        }
    }

    private final Set<Long> items;
    private final Set<RunDemand> runs;
    private final List<Candidate> candidates;
    private final Map<TraceRef, List<Candidate>> byNode;
    private final Set<Lack> lacks = new HashSet<>();
    private final Map<TraceRef, Set<Vacancy>> vacancies = new HashMap<>();
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

    /** Where and when one of the candidates was, if it is a child that is not recorded. */
    Stream<Vacancy> vacancies() {
        return vacancies.values().stream().flatMap(Set::stream);
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
        boolean mayBeOfUnit = candidates.stream().anyMatch(one -> one.node().kind() == TraceKind.UNIT);
        if (lacks.add(lack) && lack.isOfChild() && mayBeOfUnit) {
            vacancies
                    .computeIfAbsent(lack.parent(), any -> new LinkedHashSet<>())
                    .add(Vacancy.of(this, lack));
        }
    }

    Set<Lack> lacks() {
        return lacks;
    }

    /** The same in this parent. */
    Set<Vacancy> vacancies(TraceRef parent) {
        return vacancies.getOrDefault(parent, Set.of());
    }

    static long number(String spelled) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(spelled.getBytes(StandardCharsets.UTF_8));
            return ByteBuffer.wrap(hash).getLong();
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
