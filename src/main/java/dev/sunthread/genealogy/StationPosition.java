package dev.sunthread.genealogy;

/** A position of a station, with the words for both. */
record StationPosition(long id, long station, String code, String stationCode) {

    String named() {
        return code + " of " + stationCode;
    }
}
