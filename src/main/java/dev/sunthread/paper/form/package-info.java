/** What a record on paper asks for. */
@NullMarked
package dev.sunthread.paper.form;

import org.jspecify.annotations.NullMarked;
