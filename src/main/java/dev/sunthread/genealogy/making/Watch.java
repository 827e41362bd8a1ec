package dev.sunthread.genealogy.making;

import dev.sunthread.genealogy.Stage;

/** Is told by whoever makes an answer how far it is. Throws {@link NobodyWaits} once nobody waits for it any more. */
public interface Watch {

    /** Watches nothing and never stops. */
    Watch NONE = new Watch() {
        @Override
        public void begins(Stage stage) {}

        @Override
        public void reached(int nodes) {}
    };

    void begins(Stage stage);

    /** So many nodes more are looked at. */
    void reached(int nodes);
}
