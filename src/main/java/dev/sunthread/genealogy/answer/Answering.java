package dev.sunthread.genealogy.answer;

import dev.sunthread.genealogy.AnswerLine;
import dev.sunthread.genealogy.Stage;
import dev.sunthread.genealogy.TraceQuestion;
import dev.sunthread.genealogy.edge.HistoryEdges;
import dev.sunthread.genealogy.edge.RememberedEdges;
import dev.sunthread.genealogy.history.Births;
import dev.sunthread.genealogy.history.Clocks;
import dev.sunthread.genealogy.history.HistoryRecords;
import dev.sunthread.genealogy.making.Watch;
import dev.sunthread.genealogy.making.WatchedEdges;
import dev.sunthread.genealogy.scope.FoundSuspects;
import dev.sunthread.genealogy.scope.Suspects;
import dev.sunthread.genealogy.walk.Arrival;
import dev.sunthread.genealogy.walk.EdgeSource;
import dev.sunthread.genealogy.walk.Suspect;
import dev.sunthread.genealogy.walk.Walk;
import dev.sunthread.kernel.TraceRef;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Computes an answer from history at the question's cut-off. */
@Component
public class Answering {

    private static final int MOST_NAMED = 100;

    /** An answer, what people call its root's nodes, how it was reached, and what touches it. */
    public record Answered(
            List<Named> named,
            List<SuspectLine> asked,
            List<String> notes,
            List<AnswerLine> lines,
            List<FlowCount> flows,
            Touching touching) {

        List<String> suspects() {
            Stream<String> told = named.stream().limit(MOST_NAMED).map(Named::words);
            return named.size() <= MOST_NAMED
                    ? told.toList()
                    : Stream.concat(told, Stream.of("%,d more".formatted(named.size() - MOST_NAMED)))
                            .toList();
        }
    }

    private final JdbcClient jdbc;
    private final Suspects suspects;
    private final OpenMatters matters;
    private final ZoneId zone;

    public Answering(
            JdbcClient jdbc,
            Suspects suspects,
            OpenMatters matters,
            @Value("${sunthread.plant.zone:UTC}") ZoneId zone) {
        this.jdbc = jdbc;
        this.suspects = suspects;
        this.matters = matters;
        this.zone = zone;
    }

    public Answered answer(TraceQuestion question, Watch watch) {
        long cutoff = Objects.requireNonNull(question.cutoff());
        Clocks clocks = new Clocks(jdbc, cutoff);
        EdgeSource edges = new RememberedEdges(
                new WatchedEdges(new HistoryEdges(HistoryRecords.at(jdbc, cutoff, clocks), question.wider()), watch));
        Births births = new Births(jdbc, cutoff, clocks);
        FoundSuspects under = suspects.of(question.root(), cutoff, edges, births);
        List<Suspect> found = under.suspects();
        List<TraceRef> roots = found.stream().map(Suspect::node).toList();
        watch.begins(Stage.SEARCH);
        Answer answer = new Answer(question.way(), new Walk(edges, births), found, micros(question.at()));
        watch.begins(Stage.SHIPMENTS);
        answer.withShipments(new Shipments(jdbc, cutoff, edges, clocks), edges);
        watch.begins(Stage.LINES);
        Lines lines = new Lines(jdbc, cutoff, edges, zone);
        List<AnswerLine> told = lines.of(answer);
        return new Answered(
                lines.namesOf(roots),
                lines.suspects(answer, roots),
                under.notes(),
                told,
                lines.flows(answer),
                touching(answer, roots, lines, cutoff));
    }

    private Touching touching(Answer answer, List<TraceRef> roots, Lines lines, long cutoff) {
        Set<TraceRef> nodes = new HashSet<>(roots);
        answer.reached().stream().map(Arrival::node).forEach(nodes::add);
        List<String> names = lines.namesOf(roots).stream().map(Named::name).toList();
        return matters.touching(nodes, names, answer.linesInReasons(), cutoff);
    }

    private static @Nullable Long micros(@Nullable OffsetDateTime at) {
        return at == null ? null : ChronoUnit.MICROS.between(Instant.EPOCH, at.toInstant());
    }
}
