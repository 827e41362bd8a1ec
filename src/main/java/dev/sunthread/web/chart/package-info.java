/** Charts of lines as numbers that a template draws as SVG: readable in print and without colour. */
@NullMarked
package dev.sunthread.web.chart;

import org.jspecify.annotations.NullMarked;
