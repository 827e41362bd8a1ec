/** The trace as a page, as JSON and as CSV: the same answer under the same parameters. */
@NullMarked
package dev.sunthread.genealogy.web;

import org.jspecify.annotations.NullMarked;
