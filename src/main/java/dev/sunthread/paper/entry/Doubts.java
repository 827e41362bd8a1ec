package dev.sunthread.paper.entry;

import dev.sunthread.paper.form.Box;
import dev.sunthread.paper.form.Form;
import dev.sunthread.station.label.Label;
import dev.sunthread.station.label.Resembling;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** Finds what is odd about a record before it is entered: most of it is mistyped, and only who holds the paper can tell. */
@Component
public class Doubts {

    private final WrittenNames names;
    private final Resembling resembling;
    private final Clock clock;

    Doubts(WrittenNames names, Resembling resembling, Clock clock) {
        this.names = names;
        this.resembling = resembling;
        this.clock = clock;
    }

    /** What is odd, in the order of the form. */
    public List<Doubt> about(Form form, Filled filled, OffsetDateTime printedAt) {
        List<Doubt> doubts = new ArrayList<>();
        form.boxes().forEach(box -> about(form, filled, box).ifPresent(doubts::add));
        doubts.addAll(times(form, filled, printedAt));
        if (filled.actor().equals(Filled.UNREADABLE)) {
            doubts.add(Doubt.of("person", "paper.doubt.person"));
        }
        return doubts;
    }

    private List<Doubt> times(Form form, Filled filled, OffsetDateTime printedAt) {
        Optional<OffsetDateTime> end = filled.endedAt();
        Optional<OffsetDateTime> start = filled.startedAt();
        if (end.isEmpty() || form.kind().takesTime() && start.isEmpty()) {
            return List.of(Doubt.of("time", "paper.doubt.no-time"));
        }
        OffsetDateTime begun = start.orElse(end.get());
        OffsetDateTime now = OffsetDateTime.now(clock);
        List<Doubt> doubts = new ArrayList<>();
        if (end.get().isAfter(now) || begun.isAfter(now)) {
            doubts.add(Doubt.of("time", "paper.doubt.future"));
        }
        if (begun.isAfter(end.get())) {
            doubts.add(Doubt.of("time", "paper.doubt.backwards"));
        }
        if (begun.isBefore(printedAt) || end.get().isBefore(printedAt)) {
            doubts.add(Doubt.of("time", "paper.doubt.before-printing"));
        }
        return doubts;
    }

    private Optional<Doubt> about(Form form, Filled filled, Box box) {
        Optional<String> text = filled.in(box.name());
        if (text.isEmpty()) {
            boolean isSaidOtherwise = box.name().startsWith("use.")
                    && filled.in(box.name().replace("use.", "from.")).isPresent();
            return box.isNeeded() && !isSaidOtherwise
                    ? Optional.of(Doubt.of(box.name(), "paper.doubt.empty"))
                    : Optional.empty();
        }
        return isUnderstood(form, box, text.get())
                ? Optional.empty()
                : Optional.of(
                        new Doubt(box.name(), "paper.doubt.unknown", List.of(text.get()), resembling.to(text.get())));
    }

    private boolean isUnderstood(Form form, Box box, String text) {
        String station = form.station();
        return switch (box.holds()) {
            case UNIT -> names.unit(text, station, form.item()).isPresent();
            case LOAD ->
                names.one(text, station, Label.OfCarrier.class).isPresent()
                        || names.unit(text, station, null).isPresent();
            case PART ->
                names.material(text, station).isPresent()
                        || names.unit(text, station, null).isPresent();
            case MATERIAL -> names.material(text, station).isPresent();
            case POSITION -> names.one(text, station, Label.OfPosition.class).isPresent();
            case VALUE -> text.matches("-?[0-9]+([.,][0-9]+)?");
            case TEXT -> true;
        };
    }
}
