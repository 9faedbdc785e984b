package org.comparanda.suggestion;

/**
 * The numbers by which an answer is decided. Defaults are the house's own rules (no outside
 * source); House Rules may change them, and each result is stored with those it was decided by.
 *
 * @param nothingFits below this best typicality nothing on the shelf fits; a single taxon below it
 *     lies in the drawer
 * @param poorFit below this best typicality the fit is poor; at or above it a taxon is a candidate
 * @param oneShare share from which one taxon may be named
 * @param candidateShare share that a candidate of good typicality needs
 * @param weakShare share that a candidate of typicality between nothingFits and poorFit needs
 * @param gateLowerLimit lower Wilson limit that the trial of the set needs before one is named
 * @param mostNamed candidates listed before the group is named instead
 * @param degreesNeeded n − k − p + 1 that a fit needs
 * @param ruleOutAnimals animals that a taxon needs before it counts as ruled out
 * @param calibratedMiss the part of true taxa that the calibrated list may miss
 */
public record Thresholds(
    double nothingFits,
    double poorFit,
    double oneShare,
    double candidateShare,
    double weakShare,
    double gateLowerLimit,
    int mostNamed,
    int degreesNeeded,
    int ruleOutAnimals,
    double calibratedMiss) {
  /** The house's defaults. */
  public static Thresholds withDefaults() {
    return new Thresholds(0.01, 0.05, 0.95, 0.01, 0.05, 0.70, 5, 5, 3, 0.05);
  }

  /** The same with another lower limit for the gate. */
  public Thresholds withGateLowerLimit(double limit) {
    return new Thresholds(
        nothingFits,
        poorFit,
        oneShare,
        candidateShare,
        weakShare,
        limit,
        mostNamed,
        degreesNeeded,
        ruleOutAnimals,
        calibratedMiss);
  }
}
