package dev.sunthread.journal;

import dev.sunthread.kernel.Refused;

/** Says that a file is plainly not what is taken in here, such as a picture or a packed folder; nothing of it was taken. */
public final class NoText extends Refused {

    NoText(String reason, String remedy) {
        super(reason, remedy);
    }
}
