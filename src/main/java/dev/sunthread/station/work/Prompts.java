package dev.sunthread.station.work;

import dev.sunthread.catalog.Caution;
import dev.sunthread.catalog.Item;
import dev.sunthread.station.Say;
import dev.sunthread.station.label.Command;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;

/** Says what is in hand, and what to scan next. */
@Component
public class Prompts {

    private final Wants wants;
    private final LoadablePositions positions;

    Prompts(Wants wants, LoadablePositions positions) {
        this.wants = wants;
        this.positions = positions;
    }

    /** What is in hand and what comes next, with the cautions of the operation. */
    public record Prompt(
            Say inHand, List<Say> next, List<Command> commands, List<Caution> cautions, boolean onlineOnly) {}

    public Prompt of(Work work, String station, OffsetDateTime at) {
        return switch (work.task()) {
            case NOTHING ->
                prompt(
                        Say.of("hand.nothing"),
                        List.of(Say.of("next.anything")),
                        Command.SEVERAL,
                        Command.AGAIN,
                        Command.SHIP,
                        Command.UNDO);
            case UNITS -> onUnits(work, station, at);
            case AGAIN ->
                prompt(
                        work.units().isEmpty()
                                ? Say.of("hand.again")
                                : Say.of("hand.again-on", work.units().get(0).serial()),
                        List.of(Say.of(work.units().isEmpty() ? "next.unit-again" : "next.operation-again")),
                        Command.CANCEL);
            case SEVERAL ->
                prompt(
                        Say.of("hand.several", work.units().size()),
                        List.of(Say.of("next.unit-or-done")),
                        Command.DONE,
                        Command.UNDO,
                        Command.CANCEL);
            case MATERIAL -> onMaterial(work.taken().get(0), station, at);
            case POSITION -> onPosition(Objects.requireNonNull(work.position()), station, at);
            case CARRIER ->
                prompt(
                        Say.of("hand.carrier", work.called()),
                        List.of(Say.of("next.unit-on-carrier")),
                        Command.DONE,
                        Command.OFF,
                        Command.UNDO);
            case RUN -> onRun(work);
            case SHIPMENT -> onShipment(work);
        };
    }

    private Prompt onMaterial(Work.Taken material, String station, OffsetDateTime at) {
        String called = Objects.requireNonNullElse(material.container(), material.lot());
        return prompt(
                Say.of("hand.material", called),
                List.of(Say.of("next.position", String.join(" / ", positions.taking(material.item(), station, at)))),
                Command.CANCEL);
    }

    private Prompt onPosition(String position, String station, OffsetDateTime at) {
        String takes = positions.numbers(station, position, at);
        return prompt(
                Say.of("hand.position", position),
                List.of(
                        takes.isEmpty() ? Say.of("next.material-any") : Say.of("next.material", takes),
                        Say.of("next.position-words")),
                Command.OFF,
                Command.CLEAN,
                Command.CANCEL);
    }

    private Prompt onUnits(Work work, String station, OffsetDateTime at) {
        Optional<Want> want = wants.of(work, station, at);
        String units = work.units().size() == 1
                ? work.units().get(0).serial()
                : String.valueOf(work.units().size());
        List<Say> next = want.map(Prompts::wanted).orElse(List.of());
        return new Prompt(
                Say.of(
                        work.units().size() == 1 ? "hand.unit" : "hand.units",
                        units,
                        want.map(one -> one.step().name()).orElse("")),
                next,
                List.of(Command.UNDO, Command.CANCEL),
                want.map(one -> List.copyOf(one.step().cautions())).orElse(List.of()),
                want.map(one -> one.step().onlineOnly()).orElse(false));
    }

    private static List<Say> wanted(Want want) {
        List<Say> wanted = new ArrayList<>();
        want.open().stream()
                .limit(1)
                .forEach(place -> wanted.add(Say.of(
                        "next.part",
                        place.position(),
                        numbers(place.items().stream()),
                        want.open().size())));
        want.missing().forEach(consumed -> wanted.add(Say.of("next.use", numbers(consumed.choices()))));
        return wanted;
    }

    private static String numbers(Stream<Item> items) {
        return items.map(Item::number).collect(Collectors.joining(" / "));
    }

    private static Prompt onRun(Work work) {
        return work.since() == null
                ? prompt(
                        Say.of(
                                "hand.load",
                                work.called(),
                                work.carriers().size() + work.units().size()),
                        List.of(Say.of("next.load", work.called()), Say.of("next.run-beware")),
                        Command.START,
                        Command.UNDO,
                        Command.CANCEL)
                : prompt(
                        Say.of("hand.run", work.called(), Objects.requireNonNull(work.operation())),
                        List.of(Say.of("next.run-end", work.called()), Say.of("next.run-beware")),
                        Command.END,
                        Command.UNDO);
    }

    private static Prompt onShipment(Work work) {
        return work.name() == null
                ? prompt(Say.of("hand.shipment"), List.of(Say.of("next.consignee")), Command.CANCEL)
                : prompt(
                        Say.of("hand.shipment-to", work.called(), work.units().size()),
                        List.of(Say.of("next.unit-or-done")),
                        Command.DONE,
                        Command.UNDO,
                        Command.CANCEL);
    }

    private static Prompt prompt(Say inHand, List<Say> next, Command... commands) {
        return new Prompt(inHand, next, Stream.of(commands).toList(), List.of(), false);
    }
}
