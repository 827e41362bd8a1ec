package dev.sunthread.simulator.told;

import dev.sunthread.simulator.Chance;
import dev.sunthread.simulator.world.Assembly;
import dev.sunthread.simulator.world.Assembly.Child;
import dev.sunthread.simulator.world.Happening;
import dev.sunthread.simulator.world.Heat;
import dev.sunthread.simulator.world.Loading;
import dev.sunthread.simulator.world.Place;
import dev.sunthread.simulator.world.Source;
import dev.sunthread.simulator.world.Supply;
import dev.sunthread.simulator.world.Work;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Writes down what happened as envelopes have it, whole and true. */
final class Writer {

    private final Names names;
    private final Chance chance;
    private int written;

    Writer(Names names, Chance chance) {
        this.names = names;
        this.chance = chance;
    }

    /** The record of a happening; the beginning of a run or row has none of its own. */
    Optional<Draft> write(Happening happening) {
        if (happening instanceof Supply supply) {
            return Optional.of(supply(supply));
        }
        if (happening instanceof Loading loading) {
            return Optional.of(loading(loading));
        }
        if (happening instanceof Work.Begun) {
            return Optional.empty();
        }
        if (happening instanceof Work work) {
            return Optional.of(work(work));
        }
        if (happening instanceof Assembly assembly) {
            return Optional.of(assembly(assembly));
        }
        return heat((Heat) happening);
    }

    private Draft supply(Supply supply) {
        if (supply instanceof Supply.Receipt one) {
            return draft(
                    one,
                    "receipt",
                    null,
                    "lot",
                    names.of(one.lot()),
                    "item",
                    names.of(one.item()),
                    "quantity",
                    "100",
                    "unitOfMeasure",
                    "g",
                    "supplierLots",
                    all(one.supplierLots()));
        }
        if (supply instanceof Supply.Filling one) {
            List<Map<String, Object>> containers = one.labels().stream()
                    .map(label -> body("label", names.of(label)))
                    .toList();
            return draft(one, "container", null, "lot", names.of(one.lot()), "containers", containers);
        }
        if (supply instanceof Supply.Split one) {
            List<Map<String, Object>> into =
                    one.into().stream().map(lot -> body("lot", names.of(lot))).toList();
            Map<String, Object> body = source(one.from());
            body.put("into", into);
            return draft(one, "split", null, body);
        }
        if (supply instanceof Supply.Merge one) {
            return draft(one, "merge", null, "lots", all(one.lots()), "into", names.of(one.into()));
        }
        if (supply instanceof Supply.Blend one) {
            List<Map<String, Object>> parts =
                    one.components().stream().map(this::source).toList();
            return draft(
                    one,
                    "blend",
                    null,
                    "lot",
                    names.of(one.lot()),
                    "item",
                    names.of(one.item()),
                    "way",
                    one.topUp() ? "top-up" : "blend",
                    "components",
                    parts);
        }
        if (supply instanceof Supply.Relabel one) {
            Map<String, Object> body = body("lot", names.of(one.lot()), "into", names.of(one.into()));
            if (one.item() != null) {
                body.put("item", names.of(one.item()));
            }
            return draft(one, one.item() == null ? "relabel" : "regrade", null, body);
        }
        if (supply instanceof Supply.Ending one) {
            return draft(one, "lot-ending", null, "lot", names.of(one.lot()), "why", "used-up");
        }
        Supply.Recovery one = (Supply.Recovery) supply;
        Map<String, Object> body = body("unit", names.unit(one.unit()), "lot", names.of(one.lot()));
        if (one.item() != null) {
            body.put("item", names.of(one.item()));
        }
        return draft(one, "recovery", null, body);
    }

    private Draft loading(Loading loading) {
        Place place = loading.place();
        Map<String, Object> body = body("station", names.of(place.station()), "position", names.of(place.position()));
        if (loading instanceof Loading.Charge one) {
            body.putAll(source(one.source()));
            return draft(one, "charge", place.station(), body);
        }
        if (loading instanceof Loading.Discharge one) {
            if (one.into() != null || chance.of(0.5)) {
                body.put("lot", names.of(one.source().lot()));
            }
            if (one.into() != null) {
                body.put("into", names.of(one.into()));
            }
            return draft(one, "discharge", place.station(), body);
        }
        body.put("evidence", "Purged and wiped");
        return draft(loading, "clean-point", place.station(), body);
    }

    private Draft work(Work work) {
        if (work instanceof Work.Step one) {
            Map<String, Object> body = body(
                    "operation",
                    one.operation(),
                    "station",
                    names.of(one.station()),
                    "units",
                    one.units().stream().map(names::unit).distinct().toList(),
                    "startedAt",
                    one.start());
            if (!one.uses().isEmpty()) {
                body.put("uses", one.uses().stream().map(this::use).toList());
            }
            return new Draft(one, names.of(one.id()), "step", body, one.station());
        }
        Work.Test one = (Work.Test) work;
        return draft(
                one,
                "test-run",
                "RIG",
                "run",
                names.of(one.run()),
                "unit",
                names.unit(one.unit()),
                "specification",
                names.of(one.specification()),
                "equipment",
                names.of(one.equipment()),
                "startedAt",
                one.start(),
                "verdict",
                "pass");
    }

    private Map<String, Object> use(Work.Use use) {
        Map<String, Object> body = source(use.source());
        body.put("item", names.of(use.item()));
        if (use.place() != null) {
            body.put("position", names.of(use.place().position()));
        }
        return body;
    }

    private Draft assembly(Assembly assembly) {
        if (assembly instanceof Assembly.Birth one) {
            return at(one.station(), draft(one, "birth", one.station(), "units", List.of(names.unit(one.unit()))));
        }
        if (assembly instanceof Assembly.Installation one) {
            return at(
                    one.station(),
                    draft(
                            one,
                            "installation",
                            one.station(),
                            "child",
                            child(one.child()),
                            "parent",
                            names.unit(one.parent()),
                            "position",
                            one.position()));
        }
        if (assembly instanceof Assembly.Removal one) {
            Map<String, Object> body = body("child", child(one.child()), "parent", names.unit(one.parent()));
            if (one.child().unit() == null || chance.of(0.7)) {
                body.put("position", one.position());
            }
            return at(one.station(), draft(one, "removal", one.station(), body));
        }
        if (assembly instanceof Assembly.Scrap one) {
            return draft(one, "scrap", null, "units", List.of(names.unit(one.unit())), "why", "Cracked");
        }
        if (assembly instanceof Assembly.Shipment one) {
            return draft(
                    one,
                    "shipment",
                    null,
                    "shipment",
                    names.of(one.number()),
                    "consignee",
                    "Site North",
                    "units",
                    List.of(names.unit(one.unit())));
        }
        Assembly.Return one = (Assembly.Return) assembly;
        return draft(one, "return", null, "consignee", "Site North", "units", List.of(names.unit(one.unit())));
    }

    private Optional<Draft> heat(Heat heat) {
        if (heat instanceof Heat.Load one) {
            return Optional.of(at(
                    one.station(),
                    draft(
                            one,
                            "carrier-load",
                            one.station(),
                            "carrier",
                            names.of(one.carrier()),
                            "loads",
                            List.of(carried(one.carried(), one.unit())))));
        }
        if (heat instanceof Heat.Unload one) {
            return Optional.of(at(
                    one.station(),
                    draft(
                            one,
                            "carrier-unload",
                            one.station(),
                            "carrier",
                            names.of(one.carrier()),
                            "unloads",
                            List.of(carried(one.carried(), one.unit())))));
        }
        if (heat instanceof Heat.Emptying one) {
            return Optional.of(
                    at(one.station(), draft(one, "carrier-unload", one.station(), "carrier", names.of(one.carrier()))));
        }
        if (heat instanceof Heat.End one) {
            List<Map<String, Object>> units =
                    one.begin().units().stream().map(names::unit).toList();
            List<Map<String, Object>> carriers = one.begin().carriers().stream()
                    .map(carrier -> body("carrier", names.of(carrier)))
                    .toList();
            return Optional.of(draft(
                    one,
                    "cure-run",
                    "OVEN",
                    "run",
                    names.of(one.begin().run()),
                    "recipe",
                    names.of(one.recipe()),
                    "equipment",
                    names.of(one.equipment()),
                    "startedAt",
                    one.begin().at(),
                    "units",
                    units,
                    "carriers",
                    carriers));
        }
        return Optional.empty();
    }

    private Map<String, Object> carried(String name, boolean unit) {
        return unit ? body("unit", names.unit(name)) : body("carrier", names.of(name));
    }

    private Map<String, Object> child(Child child) {
        return child.unit() == null ? body("lot", names.of(child.name())) : body("unit", names.unit(child.unit()));
    }

    private Map<String, Object> source(Source source) {
        Map<String, Object> body = body("lot", names.of(source.lot()));
        if (source.container() != null) {
            body.put("container", names.of(source.container()));
        }
        return body;
    }

    private List<String> all(List<String> some) {
        return some.stream().map(names::of).toList();
    }

    private Draft at(@Nullable String station, Draft draft) {
        if (station != null) {
            draft.body.put("station", names.of(station));
        }
        return draft;
    }

    private Draft draft(Happening happening, String kind, @Nullable String station, Object... fields) {
        return draft(happening, kind, station, body(fields));
    }

    private Draft draft(Happening happening, String kind, @Nullable String station, Map<String, Object> body) {
        return new Draft(happening, names.of("e" + ++written), kind, body, station);
    }

    static Map<String, Object> body(Object... fields) {
        Map<String, Object> body = new LinkedHashMap<>();
        for (int i = 0; i < fields.length; i += 2) {
            body.put((String) fields[i], fields[i + 1]);
        }
        return body;
    }
}
