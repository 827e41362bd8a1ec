/** The language of pages: which are there, how a person chooses one, and recorded sentences put into it. */
@NullMarked
package dev.sunthread.web.language;

import org.jspecify.annotations.NullMarked;
