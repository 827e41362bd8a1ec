package dev.sunthread.genealogy.web;

import dev.sunthread.genealogy.AnswerHead;
import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.Flow;
import dev.sunthread.genealogy.Way;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * The flow of an answer with words and addresses: what the picture draws, and what stands in the table beside it.
 *
 * @param cutoff the ledger position it counts records up to
 * @param hash of the answer that it draws
 */
public record FlowPicture(@Nullable Long cutoff, String hash, List<Node> nodes, List<Link> links) {

    /** A part of the picture; its address lists what it stands for. */
    public record Node(String id, String name, @Nullable String certainty, int column, long count, String address) {}

    /** So many things of {@code from} led to, or are at, {@code to}; {@code back} links are told and not drawn. */
    public record Link(Node from, Node to, long count, boolean back, String address) {}

    static FlowPicture of(AnswerHead head, Flow flow, TraceAddress address) {
        Map<String, Flow.Node> drawn =
                flow.nodes().stream().collect(Collectors.toMap(Flow.Node::id, Function.identity()));
        Map<String, Node> nodes = flow.nodes().stream()
                .map(node -> node(node, head, address))
                .collect(Collectors.toMap(Node::id, Function.identity()));
        List<Link> links = flow.links().stream()
                .map(link -> new Link(
                        get(nodes, link.from()),
                        get(nodes, link.to()),
                        link.count(),
                        link.back(),
                        isKeptLine(get(drawn, link.to()))
                                ? inbox(head)
                                : address.page(lines(get(drawn, link.from()), get(drawn, link.to())))))
                .toList();
        return new FlowPicture(
                head.question().cutoff(),
                head.hash(),
                flow.nodes().stream().map(node -> get(nodes, node.id())).toList(),
                links);
    }

    private static <T> T get(Map<String, T> all, String id) {
        T found = all.get(id);
        if (found == null) {
            throw new IllegalStateException("A flow names no part " + id);
        }
        return found;
    }

    private static Node node(Flow.Node node, AnswerHead head, TraceAddress address) {
        return new Node(
                node.id(),
                name(node, head.question().way()),
                word(node.certainty()),
                node.column(),
                node.count(),
                isKeptLine(node) ? inbox(head) : address.page(lines(node)));
    }

    private static boolean isKeptLine(Flow.Node node) {
        return Flow.KEPT_LINE.equals(node.level());
    }

    private static String inbox(AnswerHead head) {
        return "/inbox?answer=" + head.id();
    }

    private static String name(Flow.Node node, Way way) {
        return switch (node.what()) {
            case SUSPECTS -> way == Way.FORWARD ? "suspects" : "asked of";
            case OTHER_PLACES -> "other places";
            case LEVEL -> String.valueOf(node.level());
            case PLACE -> String.valueOf(node.place());
        };
    }

    private static LineChoice lines(Flow.Node node) {
        return switch (node.what()) {
            case PLACE, OTHER_PLACES -> LineChoice.ALL.at(null, null, node.place());
            case SUSPECTS, LEVEL -> LineChoice.ALL.of(node.level(), node.certainty());
        };
    }

    // a link to a place lists what is there; any other the things that it leads to, or that led to the suspects
    private static LineChoice lines(Flow.Node from, Flow.Node to) {
        return switch (to.what()) {
            case PLACE, OTHER_PLACES -> LineChoice.ALL.at(from.level(), from.certainty(), to.place());
            case SUSPECTS -> LineChoice.ALL.of(from.level(), from.certainty());
            case LEVEL -> LineChoice.ALL.of(to.level(), to.certainty());
        };
    }

    private static @Nullable String word(@Nullable Certainty certainty) {
        return certainty == null ? null : certainty.name().toLowerCase(Locale.ROOT);
    }
}
