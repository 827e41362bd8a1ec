package dev.sunthread.genealogy.records;

/** A position of a station, with the words for both. */
public record StationPosition(long id, long station, String code, String stationCode) {

    public String named() {
        return code + " of " + stationCode;
    }
}
