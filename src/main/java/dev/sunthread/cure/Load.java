package dev.sunthread.cure;

import dev.sunthread.kernel.TraceRef;
import dev.sunthread.production.UnitName;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What was cured together, as the database knows it.
 *
 * @param units each unit in the order named, one of them twice if the body names it twice
 * @param names each unit once with its name, those on the carriers then as well
 */
record Load(List<Member> units, Map<Long, UnitName> names, List<Member> carriers) {

    /** A unit or carrier in the load, with its position if that is known. */
    record Member(long id, @Nullable String position) {}

    List<TraceRef> refs() {
        return names.keySet().stream().map(TraceRef::unit).toList();
    }
}
