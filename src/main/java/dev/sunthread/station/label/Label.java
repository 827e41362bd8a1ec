package dev.sunthread.station.label;

import dev.sunthread.production.UnitName;
import dev.sunthread.scan.meaning.Thing;
import org.jspecify.annotations.Nullable;

/** What a scanned label names, as far as the record knows it. */
public sealed interface Label {

    /** What it is called on the page. */
    String called();

    /** A unit; a new one fits the pattern of its item's serials and has no birth record. */
    record OfUnit(UnitName name, boolean isNew) implements Label {
        @Override
        public String called() {
            return name.serial();
        }
    }

    /** Material: a lot, and the container that was scanned of it. The item is absent if no origin tells it. */
    record OfMaterial(
            String lot,
            @Nullable String container,
            @Nullable String item) implements Label {
        @Override
        public String called() {
            return container == null ? lot : container;
        }
    }

    record OfCarrier(String code) implements Label {
        @Override
        public String called() {
            return code;
        }
    }

    /** A position of a station. */
    record OfPosition(String station, String code) implements Label {
        @Override
        public String called() {
            return station + " " + code;
        }
    }

    record OfEquipment(String code) implements Label {
        @Override
        public String called() {
            return code;
        }
    }

    record OfCommand(Command command) implements Label {
        @Override
        public String called() {
            return command.word();
        }
    }

    /** An operation that is to be done again, by its code in the route. */
    record OfOperation(String operation) implements Label {
        @Override
        public String called() {
            return operation;
        }
    }

    /**
     * What a label says in a form that is understood, where nothing recorded has that name.
     *
     * @param text the label as it was read
     */
    record Unrecorded(Thing thing, String name, String text) implements Label {
        @Override
        public String called() {
            return name;
        }
    }

    /** A name that nothing recorded has. */
    record Unknown(String text) implements Label {
        @Override
        public String called() {
            return text;
        }
    }
}
