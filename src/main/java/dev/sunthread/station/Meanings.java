package dev.sunthread.station;

import dev.sunthread.kernel.SerialPattern;
import dev.sunthread.production.UnitName;
import dev.sunthread.scan.ScanChoice;
import dev.sunthread.station.label.Command;
import dev.sunthread.station.label.Label;
import dev.sunthread.station.label.NearLabels;
import dev.sunthread.station.label.ScannedLabels;
import dev.sunthread.station.work.Work;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Finds what a scan means; what is in doubt it asks about, and what a person says then is what the scan means. */
@Component
class Meanings {

    /**
     * What a scan may mean to the person who scanned it.
     *
     * @param text the text that says so; of a choice by its number, what it stands for
     * @param labels all that it may name
     * @param chosen what the person said that the scan before means, if this one says so
     * @param question what the person has to say first; absent if nothing is in doubt
     */
    record Meant(
            String text,
            List<Label> labels,
            @Nullable ScanChoice chosen,
            @Nullable Verdict question) {

        Label label() {
            return labels.get(0);
        }

        boolean isTold(Command command) {
            return label() instanceof Label.OfCommand told && told.command() == command;
        }
    }

    private final ScannedLabels labels;
    private final NearLabels near;

    Meanings(ScannedLabels labels, NearLabels near) {
        this.labels = labels;
        this.near = near;
    }

    Meant of(Optional<TakenScans.Last> last, String station, Scan scan, Work work) {
        Optional<Verdict.Choice> choice = last.flatMap(asked -> choice(asked.verdict(), scan.text()));
        if (choice.isPresent()) {
            List<Label> read = labels.read(choice.get().text(), station);
            return new Meant(choice.get().text(), read, chosen(last.get(), read.get(0)), null);
        }
        List<Label> read = labels.read(scan.text(), station);
        return new Meant(scan.text(), read, null, question(read, station, scan, work));
    }

    /** A point and a digit stand for what the last scan may have meant, by its number in the list of choices. */
    private static Optional<Verdict.Choice> choice(Verdict asked, String text) {
        String typed = text.strip();
        int choice = typed.matches("\\.[1-9]") ? typed.charAt(1) - '1' : -1;
        List<Verdict.Choice> choices = asked.choices();
        return choice >= 0 && choice < choices.size() ? Optional.of(choices.get(choice)) : Optional.empty();
    }

    private static @Nullable ScanChoice chosen(TakenScans.Last asked, Label label) {
        return Choices.isOfNames(asked.verdict()) ? Choices.taken(asked.text(), label) : null;
    }

    private @Nullable Verdict question(List<Label> read, String station, Scan scan, Work work) {
        if (read.size() > 1) {
            return Choices.among(read);
        }
        Label label = read.get(0);
        if (label instanceof Label.Unknown unknown && !unknown.text().startsWith(".")) {
            return nearly(unknown, station, work);
        }
        if (label instanceof Label.Unrecorded named) {
            return nearly(new Label.Unknown(named.name()), station, work);
        }
        // what was done while the server was away can't be asked about any more
        return label instanceof Label.OfUnit unit && unit.isNew() && !scan.kept() ? ofNew(unit.name()) : null;
    }

    private @Nullable Verdict nearly(Label.Unknown unknown, String station, Work work) {
        List<Label> alike = work.wantsAnyText() ? List.of() : near.of(unknown.text(), station);
        return alike.isEmpty() ? null : Choices.nearly(unknown, alike);
    }

    private @Nullable Verdict ofNew(UnitName unit) {
        List<Label> alike = near.of(unit);
        if (!alike.isEmpty()) {
            return Choices.orNew(unit, alike);
        }
        List<SerialPattern> patterns = labels.patternsOf(unit.item());
        boolean fits = patterns.isEmpty() || patterns.stream().anyMatch(pattern -> pattern.matches(unit.serial()));
        return fits ? null : Choices.unlike(unit, patterns);
    }
}
