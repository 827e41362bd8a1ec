package dev.sunthread.genealogy;

import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Numbers given in the order in which things are first asked for; entries are numbered as they were said. */
final class CountedNumbers implements Numbers {

    private final Map<String, Long> numbers = new HashMap<>();

    CountedNumbers(List<Said> said) {
        said.forEach(one -> entry(one.id()));
    }

    @Override
    public long entry(String id) {
        return counted("entry", id);
    }

    @Override
    public long item(String number) {
        return counted("item", number);
    }

    @Override
    public long station(String code) {
        return counted("station", code);
    }

    @Override
    public long position(String station, String code) {
        return counted("position", station + "/" + code);
    }

    @Override
    public long definition(TraceKind run, String code) {
        return counted("definition", code);
    }

    @Override
    public TraceRef node(TraceKind kind, String name) {
        return new TraceRef(kind, counted(kind.name(), name));
    }

    private long counted(String sort, String name) {
        return numbers.computeIfAbsent(sort + " " + name, any -> (long) numbers.size() + 1);
    }
}
