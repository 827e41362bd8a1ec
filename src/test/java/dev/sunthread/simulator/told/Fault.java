package dev.sunthread.simulator.told;

/** One way in which the records of a plant differ from what truly happened. */
public enum Fault {
    /** A step names what it took, but no lot. */
    LOST_LOT_SCAN,
    /** A container was used or loaded, only its lot was scanned. */
    LOST_CONTAINER_SCAN,
    /** A step doesn't say from which position it took something. */
    LOST_POSITION,
    /** A step doesn't say that it took something. */
    LOST_USE,
    LOST_STEP,
    /** A charge is missing; that what was loaded before came off is recorded, and nothing was left behind. */
    LOST_CHARGE,
    /** A charge is missing, and what it left behind went along with later material. */
    LOST_CHARGE_LEFT_BEHIND,
    LOST_DISCHARGE,
    LOST_CLEAN_POINT,
    /** An installation is missing, and nothing was done to the child while it was in there. */
    LOST_INSTALLATION,
    /** An installation is missing, and something done to the child acted on the parent and all in it. */
    LOST_INSTALLATION_WORKED_ON,
    LOST_REMOVAL,
    LOST_TRAY_LOAD,
    LOST_TRAY_UNLOAD,
    /** A run names some of what was in the oven. */
    LOST_RUN_MEMBER,
    /** A mix names some of what went in. */
    LOST_COMPONENT,
    LOST_SUPPLIER_LOT,
    LOST_RECEIPT,
    /** How a lot came about is missing, not only where it was bought. */
    LOST_MAKING,
    /** That material was taken out of a unit into a lot is missing, and another record names the lot. */
    LOST_RECOVERY,
    /** That a lot went on as another item is missing, in a plant that regrades. */
    LOST_REGRADE,
    /** That a position that mixes was unloaded as a new lot is missing, and another record names the lot. */
    LOST_UNLOADING,
    /** What was first filled into containers is missing, and another record names each of them with its lot. */
    LOST_FILLING,
    LOST_BIRTH,
    /** Recorded after other things that happened later. */
    LATE,
    /** Each station's clock is wrong by as much as is released for it. */
    SKEWED_CLOCK,
    /** The same is recorded twice, a moment apart. */
    DOUBLED_SCAN,
    /** A true record is taken back. */
    VOIDED_SCAN,
    /** A record could not be read and waits in the inbox with what it names. */
    UNREADABLE_LINE,
    /** Two units have the same serial. */
    DOUBLED_SERIAL,
    /** Another lot was scanned than the one that is loaded. */
    FALSE_SCAN,
    /** Something is recorded as loaded that never was. */
    FALSE_CHARGE,
    /** No fault of a record: another material is loaded at a position by mistake and taken off unused. */
    FOREIGN_LOAD,
    /** A charge or step says another lot than there was, and the correction that tells the truth can't be read. */
    MENDED_UNREADABLY,
    /** A charge is recorded that never was, and the void that takes it back can't be read. */
    TAKEN_BACK_UNREADABLY,
    /** No fault of a record: some material is used by hand at a station where other lots are loaded. */
    USED_BY_HAND,
    /** No fault of a record: material is changed in the middle of a row of units, whose one step scans one lot. */
    CHANGED_IN_A_ROW,
    /** What was put on top of a lot, or into a container that was filled before, is missing. */
    LOST_TOP_UP,
    /** A charge and the discharge before it are missing: only quantities could show it. */
    UNDETECTABLE_CHARGE,
    /** That a child was taken out is missing, and nothing shows that it went elsewhere. */
    UNDETECTABLE_REMOVAL,
    /** That a child was put in is missing, and nothing was due of its parent since. */
    UNDETECTABLE_INSTALLATION;

    /** Whether no rule that reads these records can know of it; counted apart. */
    public boolean isCountedApart() {
        return ordinal() >= LOST_TOP_UP.ordinal();
    }

    /** Whether a record says what isn't so. */
    public boolean isFalse() {
        return this == FALSE_SCAN || this == FALSE_CHARGE;
    }
}
