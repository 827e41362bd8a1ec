package dev.sunthread.simulator.world;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One physical unit, with what is in its positions. */
final class Body {

    /** A part of a lot in a position. */
    record Part(String lot, Matter matter) {}

    final String name;
    final Thing identity;
    final Map<String, Body> children = new LinkedHashMap<>();
    final Map<String, Part> parts = new LinkedHashMap<>();

    @Nullable
    Body parent;

    private final Matter own;

    Body(String name, String serial, Register register) {
        this.name = name;
        this.identity = Thing.unit(serial);
        this.own = register.matter(identity);
    }

    /** Everything in it at present and everything that ever touched it. */
    Matter content() {
        Matter content = own.copy();
        parts.values().forEach(part -> content.take(part.matter()));
        children.values().forEach(child -> content.take(child.content()));
        return content;
    }

    /** Takes in matter for good. */
    void take(Matter matter) {
        own.take(matter);
        touchAround(matter);
    }

    void put(String position, Body child) {
        children.put(position, child);
        child.parent = this;
        touchAround(child.content());
    }

    void put(String position, Part part) {
        parts.put(position, part);
        touchAround(part.matter());
    }

    void takeOut(String position) {
        Body child = children.remove(position);
        if (child != null) {
            child.parent = null;
        }
        parts.remove(position);
    }

    private void touchAround(Matter matter) {
        for (Body body = this; body != null; body = body.parent) {
            body.own.touch(matter);
        }
    }

    Body outermost() {
        Body body = this;
        while (body.parent != null) {
            body = body.parent;
        }
        return body;
    }

    /** This unit and everything inside it. */
    List<Body> whole() {
        List<Body> whole = new ArrayList<>(List.of(this));
        children.values().forEach(child -> whole.addAll(child.whole()));
        return whole;
    }
}
