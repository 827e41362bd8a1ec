/** Makes the first demo plant's journal from a seed, so that its file can be checked and made again. */
@NullMarked
package dev.sunthread.demo;

import org.jspecify.annotations.NullMarked;
