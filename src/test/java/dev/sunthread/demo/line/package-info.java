/** What the demo line makes, from receivers to panels, with its mishaps. */
@NullMarked
package dev.sunthread.demo.line;

import org.jspecify.annotations.NullMarked;
