package org.comparanda.sizeestimate;

import org.comparanda.statistics.line.BackTransform;

/** Which back-transform factor moves the estimate; the limits stay as they are. */
public enum Correction {
  /** The plain antilog: the median. The default. */
  NAIVE("naive"),
  LOGNORMAL("lognormal"),
  SMEARING("smearing"),
  RATIO("ratio");

  private final String word;

  Correction(String word) {
    this.word = word;
  }

  /** The word shown and written in JSON. */
  public String word() {
    return word;
  }

  /** This correction's factor. */
  public double factor(BackTransform factors) {
    return switch (this) {
      case NAIVE -> factors.naive();
      case LOGNORMAL -> factors.lognormal();
      case SMEARING -> factors.smearing();
      case RATIO -> factors.ratio();
    };
  }
}
