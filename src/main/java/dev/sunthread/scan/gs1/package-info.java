/** GS1 element strings, Digital Links and EPC URIs, by the embedded GS1 Barcode Syntax Dictionary; without Spring. */
@NullMarked
package dev.sunthread.scan.gs1;

import org.jspecify.annotations.NullMarked;
