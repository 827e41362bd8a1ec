package dev.sunthread.station.work;

import java.util.List;
import java.util.Set;

/**
 * An operation of a route as the page needs it.
 *
 * @param consumes for each item it takes in, the numbers of all that are accepted for it
 * @param anywhere whether no station is named for it
 * @param here whether it may be done at the station asked for
 * @param cautions what to beware of: {@code uv}, {@code heat}, {@code voltage}, {@code chemical}
 * @param onlineOnly whether it may not be done while the server is away
 */
record Step(
        String operation,
        String name,
        List<Set<String>> consumes,
        boolean anywhere,
        boolean here,
        List<String> cautions,
        boolean onlineOnly) {}
