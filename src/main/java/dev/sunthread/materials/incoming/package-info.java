/** Whether a lot may be used: its incoming release, the papers that came with it, and its status. */
@NullMarked
@NamedInterface("incoming")
package dev.sunthread.materials.incoming;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
