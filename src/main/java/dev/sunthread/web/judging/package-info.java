/** Pages and HTTP on which runs are judged again under another revision or with a corrected sensor. */
@NullMarked
package dev.sunthread.web.judging;

import org.jspecify.annotations.NullMarked;
