/** What tests of every module share: a real PostgreSQL server, fresh databases on it, and a browser. */
@NullMarked
package dev.sunthread.testing;

import org.jspecify.annotations.NullMarked;
