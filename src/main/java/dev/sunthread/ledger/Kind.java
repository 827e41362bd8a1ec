package dev.sunthread.ledger;

/**
 * A kind of happening or definition that a module owns: how its body reads and what it writes. Each is a Spring bean;
 * the door finds them by name and version.
 *
 * @param <B> the record that holds the body, its components described by {@link dev.sunthread.ledger.body.Field}
 */
public interface Kind<B> {

    /** The kind's name in envelopes. */
    String name();

    /** The version of its fields; a later version is another bean of the same name. */
    default int version() {
        return 1;
    }

    Class<B> body();

    /** What an envelope of this kind says, as a sentence for the reference. */
    String meaning();

    /** Writes history and state within the door's transaction; may refuse, or note findings on the fact. */
    void record(Fact<B> fact);

    /** Whether it may well be told before the time that it names, such as what is in force from then on. */
    default boolean takesEffectLater() {
        return false;
    }

    /** Whether a void or correction may withdraw an entry of this kind. */
    default boolean withdrawable() {
        return true;
    }

    /** Brings state in line after an entry of this kind was withdrawn. */
    default void withdrawn(long entry) {}
}
