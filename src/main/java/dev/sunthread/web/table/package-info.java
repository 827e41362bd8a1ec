/** Lists as files: what a page shows as a table is given as CSV or XLSX, whole, at its address with {@code format}. */
@NullMarked
package dev.sunthread.web.table;

import org.jspecify.annotations.NullMarked;
