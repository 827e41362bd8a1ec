/** What a scanned text can mean; results of reading it, without Spring. */
@NullMarked
@NamedInterface("meaning")
package dev.sunthread.scan.meaning;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
