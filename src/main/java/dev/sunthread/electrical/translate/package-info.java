/** Curves translated from one irradiance and temperature to another, as IEC 60891 says; edition and procedure are named. */
@NullMarked
@NamedInterface("translate")
package dev.sunthread.electrical.translate;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
