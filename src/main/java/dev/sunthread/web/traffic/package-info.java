/** How much of the server one address may take up: connections, and bodies that are long in coming. */
@NullMarked
package dev.sunthread.web.traffic;

import org.jspecify.annotations.NullMarked;
