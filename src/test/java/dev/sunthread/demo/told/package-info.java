/** What the demo plant tells: envelopes in the order of recording, and the journal they are written to. */
@NullMarked
package dev.sunthread.demo.told;

import org.jspecify.annotations.NullMarked;
