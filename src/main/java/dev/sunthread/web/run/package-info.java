/** The pages of one cure run and one test run. */
@NullMarked
package dev.sunthread.web.run;

import org.jspecify.annotations.NullMarked;
