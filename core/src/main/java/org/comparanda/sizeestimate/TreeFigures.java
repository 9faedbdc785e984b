package org.comparanda.sizeestimate;

import org.comparanda.statistics.Outcome;

/**
 * What only a line on a tree has.
 *
 * @param lambda λ, how far shared ancestry counts: 0 not at all, 1 Brownian motion
 * @param logLikelihood of the line at that λ
 * @param contrasts the same taxa through independent contrasts (λ = 1); for one predictor
 */
public record TreeFigures(double lambda, double logLikelihood, Outcome<ContrastLine> contrasts) {}
