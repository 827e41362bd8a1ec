/** The pages of one cure run, one test run and one piece of equipment. */
@NullMarked
package dev.sunthread.web.run;

import org.jspecify.annotations.NullMarked;
