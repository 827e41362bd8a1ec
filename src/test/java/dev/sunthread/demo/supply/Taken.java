package dev.sunthread.demo.supply;

import dev.sunthread.demo.told.Bodies;
import dev.sunthread.simulator.world.Work;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.ObjectNode;

/** Material that goes into units: what truly goes in, and what is told of it. */
public record Taken(
        Work.Use truly,
        @Nullable String lot,
        @Nullable String container,
        @Nullable String position,
        String quantity,
        String unitOfMeasure) {

    static Taken of(Work.Use truly, String quantity, String unitOfMeasure) {
        return new Taken(
                truly,
                truly.source().lot(),
                truly.source().container(),
                truly.place() == null ? null : truly.place().position(),
                quantity,
                unitOfMeasure);
    }

    /** The same, told without the label of the lot. */
    public Taken unlabelled() {
        return new Taken(truly, null, null, position, quantity, unitOfMeasure);
    }

    /** The same, told with the label of a lot that it is not. */
    public Taken mistakenFor(String other) {
        return new Taken(truly, other, null, position, quantity, unitOfMeasure);
    }

    /** The same, told without where it came from. */
    public Taken fromSomewhere() {
        return new Taken(truly, null, null, null, quantity, unitOfMeasure);
    }

    public ObjectNode json() {
        return Bodies.of(
                "item",
                truly.item(),
                "lot",
                Optional.ofNullable(lot),
                "container",
                Optional.ofNullable(container),
                "position",
                Optional.ofNullable(position),
                "quantity",
                quantity,
                "unitOfMeasure",
                unitOfMeasure);
    }
}
