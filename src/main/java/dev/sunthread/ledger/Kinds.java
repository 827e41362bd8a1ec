package dev.sunthread.ledger;

import dev.sunthread.ledger.body.Unreadable;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** All kinds that the modules register, by name and version. */
@Component
public class Kinds {

    private final Map<String, Kind<?>> byName = new TreeMap<>();

    Kinds(List<Kind<?>> kinds) {
        for (Kind<?> kind : kinds) {
            if (byName.put(key(kind.name(), kind.version()), kind) != null) {
                throw new IllegalStateException("two kinds named " + key(kind.name(), kind.version()));
            }
        }
    }

    /** Every kind, by name and version. */
    public Collection<Kind<?>> all() {
        return byName.values().stream()
                .sorted(Comparator.<Kind<?>, String>comparing(Kind::name).thenComparing(Kind::version))
                .toList();
    }

    Kind<?> get(String name, int version) {
        Kind<?> kind = byName.get(key(name, version));
        if (kind == null) {
            throw Unreadable.at("envelope.kind", "\"" + name + "\" version " + version + " is not known", remedy());
        }
        return kind;
    }

    private String remedy() {
        return "Give one of: "
                + all().stream().map(kind -> kind.name() + " " + kind.version()).collect(Collectors.joining(", "));
    }

    private static String key(String name, int version) {
        return name + " " + version;
    }
}
