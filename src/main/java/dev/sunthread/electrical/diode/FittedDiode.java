package dev.sunthread.electrical.diode;

/** A model fitted to a curve, with the residual that was made small and its root mean square in amperes. */
public record FittedDiode(SingleDiode diode, Residual residual, double rootMeanSquare) {}
