/**
 * What scanned texts mean, and the plant's own labels.
 *
 * <p>{@link dev.sunthread.scan.Scans#read} takes whatever a scanner sent and gives a
 * {@link dev.sunthread.scan.meaning.Scanned}: one or several readings, each with its fields, what kind of thing it names
 * ({@link dev.sunthread.scan.meaning.Reading#thing}) and what is to be said about it. It never throws and never decides:
 * take a reading without asking only if {@code sure()} gives it, or if the record knows exactly one of the things that
 * the readings name. Otherwise a person chooses, among the readings or among what {@link dev.sunthread.scan.Likeness}
 * finds spelled nearly so, and {@link dev.sunthread.scan.ScanChoices#chosen} records the choice.
 *
 * <p>{@code scan.label} writes labels; {@link dev.sunthread.scan.label.LabelCode} says what their codes hold.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"kernel", "ledger", "ledger::body", "catalog"})
package dev.sunthread.scan;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
