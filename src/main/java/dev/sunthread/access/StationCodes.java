package dev.sunthread.access;

import java.util.List;

/** Lists the codes of the stations of the plant; whichever module keeps the stations implements it. */
@FunctionalInterface
public interface StationCodes {

    /** Every station's code, in order. */
    List<String> all();
}
