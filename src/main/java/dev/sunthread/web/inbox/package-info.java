/** What waits for a person: lines to mend, findings to settle. */
@NullMarked
package dev.sunthread.web.inbox;

import org.jspecify.annotations.NullMarked;
