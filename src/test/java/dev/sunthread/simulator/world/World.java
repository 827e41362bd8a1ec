package dev.sunthread.simulator.world;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A plant as it truly is after some happenings. What is in what follows from moving matter, never from records. */
public final class World {

    final Register register = new Register();
    private final Map<Thing, Matter> stock = new LinkedHashMap<>();
    private final Map<Place, Spot> spots = new LinkedHashMap<>();
    private final Map<String, Body> bodies = new LinkedHashMap<>();
    final Carriers carriers = new Carriers();
    private final Map<Thing, Load> running = new LinkedHashMap<>();

    /** What is in an oven: units by themselves, and carriers with all that is on them. */
    record Load(Set<String> bodies, Set<String> carriers) {}

    /** The world after all of these, in their order. */
    public static World after(Collection<Happening> happenings) {
        World world = new World();
        happenings.forEach(world::happens);
        return world;
    }

    /** Lets it happen, and lets every run go on acting on whatever is in its oven. */
    public void happens(Happening happening) {
        happening.happenIn(this);
        running.forEach((run, load) -> inside(load).forEach(body -> act(body, false, register.matter(run))));
    }

    /** Everything that is in a thing at present. */
    public Set<Thing> present(Thing thing) {
        return register.things(contents(thing).present());
    }

    /** Everything that ever touched a thing. */
    public Set<Thing> touched(Thing thing) {
        return register.things(contents(thing).touched());
    }

    // two bodies under one serial are one thing to everybody who reads serials
    private Matter contents(Thing thing) {
        Matter contents = new Matter();
        bodies.values().stream()
                .filter(body -> body.identity.equals(thing))
                .forEach(body -> contents.take(body.content()));
        Matter stored = stock.get(thing);
        if (stored != null) {
            contents.take(stored);
        }
        return contents;
    }

    /** Every lot, container and unit that there ever was. */
    public Set<Thing> holders() {
        Set<Thing> holders = new LinkedHashSet<>(stock.keySet());
        bodies.values().forEach(body -> holders.add(body.identity));
        return holders;
    }

    /** What is loaded at a place. */
    public @Nullable Source loadedAt(Place place) {
        return spot(place).loaded;
    }

    /** What earlier loads left at a place since its last purge. */
    public Set<Source> leftAt(Place place) {
        return Set.copyOf(spot(place).left());
    }

    public int usesSinceChange(Place place) {
        return spot(place).usesSinceChange();
    }

    /** How often material was drawn at a place since this was taken off there. */
    public int usesSinceLeft(Place place, Source source) {
        return spot(place).usesSinceLeft(source);
    }

    /** What a unit is in, if in anything. */
    public @Nullable String parentOf(String body) {
        Body parent = body(body).parent;
        return parent == null ? null : parent.name;
    }

    public String outermostOf(String body) {
        return body(body).outermost().name;
    }

    /** The units in the positions of a unit. */
    public Map<String, String> childrenOf(String body) {
        Map<String, String> children = new LinkedHashMap<>();
        body(body).children.forEach((position, child) -> children.put(position, child.name));
        return children;
    }

    /** The lots of the parts in the positions of a unit. */
    public Map<String, String> partsOf(String body) {
        Map<String, String> parts = new LinkedHashMap<>();
        body(body).parts.forEach((position, part) -> parts.put(position, part.lot()));
        return parts;
    }

    /** A unit and all that is inside it. */
    public List<String> wholeOf(String body) {
        return body(body).whole().stream().map(one -> one.name).toList();
    }

    /** The carrier that a unit or carrier is on, if on any. */
    public @Nullable String carrierOf(String carried) {
        return carriers.under(carried);
    }

    /** Units and carriers that are directly on a carrier. */
    public Set<String> carriedBy(String carrier) {
        return carriers.on(carrier);
    }

    /** The cure runs that a unit has been through. */
    public List<String> runsThrough(String body) {
        return register.things(body(body).content().present()).stream()
                .filter(thing -> thing.kind() == Thing.Kind.CURE_RUN)
                .map(Thing::name)
                .toList();
    }

    /** The units in the oven under a run that goes on, by themselves or on carriers. */
    public Set<String> aboard(String run) {
        Load load = running.get(new Thing(Thing.Kind.CURE_RUN, run));
        return load == null ? Set.of() : inside(load).collect(Collectors.toSet());
    }

    void bear(String body, String serial) {
        bodies.put(body, new Body(body, serial, register));
    }

    Body body(String name) {
        return Objects.requireNonNull(bodies.get(name), name);
    }

    Spot spot(Place place) {
        return spots.computeIfAbsent(place, any -> new Spot());
    }

    /** The matter of a lot or container, which is one well-mixed whole. */
    Matter matter(Thing vessel) {
        return stock.computeIfAbsent(vessel, register::matter);
    }

    /** Acts on the outermost unit around a unit with all inside, or on that unit alone. */
    void act(String name, boolean alone, Matter matter) {
        Body body = body(name);
        Stream<Body> reached = alone ? Stream.of(body) : body.outermost().whole().stream();
        reached.toList().forEach(one -> one.take(matter));
    }

    void begin(Thing run, Load load) {
        running.put(run, load);
    }

    void end(Thing run) {
        running.remove(run);
    }

    private Stream<String> inside(Load load) {
        return Stream.concat(
                load.bodies().stream(),
                load.carriers().stream()
                        .flatMap(carrier -> carriers.allOn(carrier).stream())
                        .filter(bodies::containsKey));
    }
}
