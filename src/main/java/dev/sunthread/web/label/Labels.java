package dev.sunthread.web.label;

import dev.sunthread.catalog.Item;
import dev.sunthread.catalog.Items;
import dev.sunthread.kernel.Refused;
import dev.sunthread.kernel.UnitId;
import dev.sunthread.scan.label.Label;
import dev.sunthread.scan.label.LabelCode;
import dev.sunthread.web.PlantTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Service;

/** Makes labels: what their codes hold, and the text beside them in a person's language. */
@Service
class Labels {

    private final Items items;
    private final LotLines lots;
    private final PlantTime time;
    private final MessageSource words;

    Labels(Items items, LotLines lots, PlantTime time, MessageSource words) {
        this.items = items;
        this.lots = lots;
        this.time = time;
        this.words = words;
    }

    /** The label that is asked for. @throws Refused if its item or station is missing */
    Label of(LabelRequest asked, Locale locale) {
        String name = asked.name();
        return switch (asked.of()) {
            case UNIT -> unit(UnitId.of(blankAsNull(asked.issuer()), needed(asked.item(), "item"), name));
            case LOT -> plain(LabelCode.lot(name), asked.of(), name, ofLot(name, locale), locale);
            case CONTAINER -> plain(LabelCode.container(name), asked.of(), name, inContainer(name, locale), locale);
            case CARRIER -> plain(LabelCode.carrier(name), asked.of(), name, List.of(), locale);
            case STATION -> plain(LabelCode.station(name), asked.of(), name, List.of(), locale);
            case POSITION -> {
                String station = needed(asked.station(), "station");
                yield plain(LabelCode.position(station, name), asked.of(), name, List.of(station), locale);
            }
            case BADGE -> plain(LabelCode.badge(name), asked.of(), name, List.of(), locale);
            case COMMAND -> plain(LabelCode.command(name), asked.of(), name, List.of(), locale);
        };
    }

    /** The label of a unit, whether it came about yet or not. */
    Label unit(UnitId id) {
        String level = items.find(id.item()).map(Item::level).orElse("");
        List<String> lines =
                id.issuer().equals(UnitId.THIS_PLANT) ? List.of(id.item()) : List.of(id.item(), id.issuer());
        return new Label(LabelCode.unit(id), level == null ? "" : level, id.serial(), lines);
    }

    /** Its item, and when it expires. */
    private List<String> ofLot(String number, Locale locale) {
        List<String> lines = new ArrayList<>(lots.item(number).stream().toList());
        lots.expiresAt(number)
                .map(at -> words.getMessage("scan.label.expires", new Object[] {time.shown(at)}, locale))
                .ifPresent(lines::add);
        return lines;
    }

    /** The lot that a container holds, with what is said of it; all its lots if it holds several. */
    private List<String> inContainer(String label, Locale locale) {
        List<String> lines = new ArrayList<>(lots.inContainer(label));
        if (lines.size() == 1) {
            lines.addAll(ofLot(lines.get(0), locale));
        }
        return lines;
    }

    private Label plain(String code, LabelOf of, String name, List<String> lines, Locale locale) {
        return new Label(code, words.getMessage("scan.thing." + of.name(), null, locale), name, lines);
    }

    private static String needed(@Nullable String text, String what) {
        if (text == null || text.isBlank()) {
            throw new Refused("The label’s " + what + " is missing", "Open the label from the page of what it is for");
        }
        return text;
    }

    private static @Nullable String blankAsNull(@Nullable String text) {
        return text == null || text.isBlank() ? null : text;
    }
}
