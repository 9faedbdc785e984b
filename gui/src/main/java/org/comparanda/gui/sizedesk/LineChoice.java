package org.comparanda.gui.sizedesk;

import java.util.Optional;
import org.comparanda.sizeestimate.Correction;
import org.comparanda.sizeestimate.LineMethod;
import org.comparanda.sizeestimate.LineScale;
import org.comparanda.taxon.TaxonName;

/**
 * How the lines are fitted and told.
 *
 * @param method how they are fitted
 * @param scale on which scale
 * @param level level of the intervals, between 0 and 1
 * @param correction which factor moves the estimate, where the line has one
 * @param beside what the second line is fitted to
 * @param masses whose body masses feed a line
 * @param tree the tree that a line across taxa stands on
 * @param boneTaxon what the bone is, where a line on a tree is told; else its own animal's taxon
 */
public record LineChoice(
    LineMethod method,
    LineScale scale,
    double level,
    Correction correction,
    Beside beside,
    Masses masses,
    Optional<TreeFile> tree,
    Optional<TaxonName> boneTaxon) {

  /** Whose body masses feed a line. */
  public enum Masses {
    /** Captive animals left out. */
    WILD,
    ALL
  }

  /** Ordinary least squares on natural logs at 95 %, the line of all taxa beside it. */
  static LineChoice withDefaults() {
    return new LineChoice(
        LineMethod.OLS,
        LineScale.LN,
        0.95,
        Correction.NAIVE,
        Beside.ALL,
        Masses.WILD,
        Optional.empty(),
        Optional.empty());
  }

  LineChoice withMethod(LineMethod other) {
    return new LineChoice(other, scale, level, correction, beside, masses, tree, boneTaxon);
  }

  LineChoice withScale(LineScale other) {
    return new LineChoice(method, other, level, correction, beside, masses, tree, boneTaxon);
  }

  LineChoice withLevel(double other) {
    return new LineChoice(method, scale, other, correction, beside, masses, tree, boneTaxon);
  }

  LineChoice withCorrection(Correction other) {
    return new LineChoice(method, scale, level, other, beside, masses, tree, boneTaxon);
  }

  LineChoice withBeside(Beside other) {
    return new LineChoice(method, scale, level, correction, other, masses, tree, boneTaxon);
  }

  LineChoice withMasses(Masses other) {
    return new LineChoice(method, scale, level, correction, beside, other, tree, boneTaxon);
  }

  LineChoice withTree(TreeFile other) {
    return new LineChoice(
        method, scale, level, correction, beside, masses, Optional.of(other), boneTaxon);
  }

  LineChoice withBoneTaxon(Optional<TaxonName> other) {
    return new LineChoice(method, scale, level, correction, beside, masses, tree, other);
  }
}
