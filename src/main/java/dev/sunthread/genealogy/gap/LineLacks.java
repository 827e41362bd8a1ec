package dev.sunthread.genealogy.gap;

import dev.sunthread.genealogy.line.LineWays;
import dev.sunthread.genealogy.position.Use;
import dev.sunthread.genealogy.records.Happening;
import dev.sunthread.genealogy.records.OpenLine;
import dev.sunthread.genealogy.records.OpenLine.Spot;
import dev.sunthread.genealogy.records.Records;
import dev.sunthread.genealogy.records.StationPosition;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What kept lines lack: the lots that were used, or of which something was made or filled, and that can't be read. Where a
 * line broke off before these end, a lot of any item may be among them.
 */
final class LineLacks {

    private final Records records;
    private @Nullable List<Lack> all;

    LineLacks(Records records) {
        this.records = records;
    }

    List<Lack> all() {
        if (all == null) {
            all = records.lines().open().stream().flatMap(this::of).distinct().toList();
        }
        return all;
    }

    private Stream<Lack> of(OpenLine line) {
        return line.uses().stream().filter(use -> !isCovered(use, line)).flatMap(use -> of(use, line));
    }

    private Stream<Lack> of(OpenLine.Use use, OpenLine line) {
        Happening acting = LineWays.acting(line);
        Stream<Lack> made = LineWays.made(line).stream()
                .map(one -> Lack.ofComponent(items(use), Lacks.making(one, line.entry(), line.at())));
        return acting.units().isEmpty() ? made : Stream.concat(made, Stream.of(Lack.ofMaterial(items(use), acting)));
    }

    private Set<Long> items(OpenLine.Use use) {
        return use.items().isEmpty() ? records.lots().items() : use.items();
    }

    /** Whether something of its items surely was loaded at whichever position it names. */
    private boolean isCovered(OpenLine.Use use, OpenLine line) {
        Set<Long> named = line.positions().stream()
                .filter(spot -> spot.within().equals(use.within()))
                .map(Spot::position)
                .collect(Collectors.toSet());
        List<StationPosition> positions =
                named.isEmpty() ? List.of() : records.uses().positions(named);
        return !use.items().isEmpty()
                && !positions.isEmpty()
                && positions.stream()
                        .map(records.uses()::timeline)
                        .allMatch(timeline -> use.items().stream()
                                .allMatch(item -> timeline.surelyHeldSome(new Use(line.at(), item, null))));
    }
}
