/** Journals and envelopes over HTTP, and the pages for them. */
@NullMarked
package dev.sunthread.journal.web;

import org.jspecify.annotations.NullMarked;
