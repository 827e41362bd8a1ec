/** Messages of ISO/IEC 15434 and the data identifiers of ANSI MH10.8.2 in them; without Spring. */
@NullMarked
package dev.sunthread.scan.message;

import org.jspecify.annotations.NullMarked;
