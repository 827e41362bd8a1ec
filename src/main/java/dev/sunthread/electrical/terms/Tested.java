package dev.sunthread.electrical.terms;

import java.util.List;

/** What was measured in one test, with the error that was found in the rig afterwards. */
public record Tested(List<Swept> sweeps, List<SafetyReading> readings, RigError error) {}
