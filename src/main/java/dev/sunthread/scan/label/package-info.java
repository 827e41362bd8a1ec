/** Labels: what the plant's own codes hold, and drawing them with their text as SVG and as PDF sheets. */
@NullMarked
@NamedInterface("label")
package dev.sunthread.scan.label;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
