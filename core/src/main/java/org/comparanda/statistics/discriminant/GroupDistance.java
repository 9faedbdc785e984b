package org.comparanda.statistics.discriminant;

/**
 * How far a row lies from one group.
 *
 * @param rows rows of the group in the fit
 * @param squared squared Mahalanobis distance D² from its mean
 * @param typicality chance that a true member lies at least this far away, 0 to 1
 */
public record GroupDistance(int group, int rows, double squared, double typicality) {}
