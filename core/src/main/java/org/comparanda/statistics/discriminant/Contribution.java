package org.comparanda.statistics.discriminant;

/**
 * What one measurement adds to a squared distance.
 *
 * @param column of the fit
 * @param part its term (x − μ)ⱼ (W⁻¹(x − μ))ⱼ; the parts sum to D², and one may be negative where
 *     the value is just what the others let expect
 * @param dropIfLeftOut by how much D² falls if the measurement is left out; never negative
 */
public record Contribution(int column, double part, double dropIfLeftOut) {}
