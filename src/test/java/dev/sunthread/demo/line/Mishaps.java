package dev.sunthread.demo.line;

/** What goes wrong on the line and when; trays, rows, walls and modules are counted from 0 on each working day. */
final class Mishaps {

    private Mishaps() {}

    static boolean cellHasNoLabel(int day, int tray, int row) {
        return day == 12 && tray == 0 && row == 2;
    }

    static boolean oldCartridgeIsScanned(int day, int tray, int row) {
        return day == 17 && tray == 0 && row == 0;
    }

    static boolean wrongCellIsScanned(int day, int tray, int row) {
        return day == 32 && tray == 0 && row == 1;
    }

    static boolean bondIsNeverTold(int day, int tray, int row) {
        return day == 30 && tray == 1 && row == 3;
    }

    static boolean trayIsNotToldInItsRun(int day, int tray) {
        return day == 24 && tray == 0;
    }

    static boolean unloadIsNeverTold(int day, int tray) {
        return day == 21 && tray == 1;
    }

    static boolean positionIsFilledTwice(int day, int wall, int position) {
        return day == 11 && wall == 0 && position == 5;
    }

    static boolean installationIsNeverTold(int day, int wall, int position) {
        return day == 27 && wall == 1 && position == 7;
    }

    static boolean heldReceiverIsPutIn(int day, int wall, int position) {
        return day == 44 && wall == 1 && position == 12;
    }

    static boolean wallFallsBeforeSoldering(int day, int wall) {
        return day == 22 && wall == 0;
    }

    static boolean wallIsScrappedAfterCoating(int day, int wall) {
        return day == 31 && wall == 1;
    }

    static boolean opticIsToldOfAnother(int day, int wall) {
        return day == 16 && wall == 1;
    }

    static boolean opticStaysInTheInbox(int day, int wall) {
        return day == 34 && wall == 2;
    }

    static boolean gunIsNotTold(int day, int module) {
        return day == 25 && module < 2;
    }
}
