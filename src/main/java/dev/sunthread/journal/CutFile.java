package dev.sunthread.journal;

import java.io.IOException;

/** Says that a packed file ends before its end, or is damaged from somewhere on; what was unpacked before is good. */
final class CutFile extends IOException {

    CutFile(IOException cause) {
        super("a packed file is cut or damaged", cause);
    }
}
