package dev.sunthread.demo.supply;

/** On which mornings a change of cartridge goes otherwise than it should; valves are counted over both bonders. */
final class Stories {

    private Stories() {}

    /** The ninth cartridge of A-17 gives way to one of A-18, and nobody purges. */
    static boolean cartridgeIsChangedWithoutPurge(int workday, int valve) {
        return workday == 36 && valve == 0;
    }

    /** The next cartridge is scanned, the one before it never as taken off. */
    static boolean dischargeIsNeverTold(int workday, int valve) {
        return workday == 18 && valve == 2;
    }

    /** One is scanned as taken off an hour before it is; receivers are bonded while nothing seems to be loaded. */
    static boolean cartridgeIsToldTooLate(int workday, int valve) {
        return workday == 24 && valve == 3;
    }
}
