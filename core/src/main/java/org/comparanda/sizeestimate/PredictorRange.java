package org.comparanda.sizeestimate;

/** Smallest and largest value of one predictor on a line, own unit. */
public record PredictorRange(String predictor, double low, double high) {}
