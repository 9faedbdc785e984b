package org.comparanda.statistics.robust;

import java.util.List;

/**
 * Centre and spread by minimum covariance determinant, as far as they are needed: distances.
 *
 * @param bestSubset rows, from 0, whose covariance has the smallest determinant
 * @param logDeterminant natural log of the determinant of that covariance, divisor h − 1
 * @param squared squared distance of every row by the reweighted centre and spread, in their order;
 *     for rows of one normal kind near chi-square on as many degrees of freedom as columns
 */
public record RobustSpread(List<Integer> bestSubset, double logDeterminant, List<Double> squared) {
  public RobustSpread {
    bestSubset = List.copyOf(bestSubset);
    squared = List.copyOf(squared);
  }
}
