package dev.sunthread.demo.line;

import dev.sunthread.demo.supply.Loading;
import dev.sunthread.demo.told.Notebook;

/** Makes receivers: two trays on a working day, and one in the night of the change to summer time. */
public final class Receivers {

    private static final int DAY_AFTER_THE_NIGHT = 30;

    private final Bonding bonding;
    private final Finishing finishing;
    private final OpticMounting optics;
    private final Stock stock;
    private int trays;

    public Receivers(Notebook notes, Loading loading, Stock stock) {
        this.bonding = new Bonding(notes, loading);
        this.finishing = new Finishing(notes, loading);
        this.optics = new OpticMounting(notes, loading);
        this.stock = stock;
    }

    /** Makes a day's receivers; the last day makes none. */
    public void make(int day) {
        if (day == DAY_AFTER_THE_NIGHT) {
            make(Tray.ofTheNight(trays++));
        }
        if (day <= DAY_AFTER_THE_NIGHT) {
            make(Tray.first(trays++, day));
            make(Tray.second(trays++, day));
        }
    }

    private void make(Tray tray) {
        bonding.bond(tray);
        finishing.finish(tray);
        stock.add(optics.mount(tray));
    }
}
