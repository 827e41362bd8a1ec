/** What there is of a lot and where: containers and their life, counts and what leaves the stock, the balance. */
@NullMarked
@NamedInterface("stock")
package dev.sunthread.materials.stock;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
