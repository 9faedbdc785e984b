package org.comparanda.statistics.discriminant;

/** A fitted way to tell groups apart. Keeps what it needs, not more; never changes. */
public interface DiscriminantModel {
  /** Shares of the groups for one row of as many values as the columns fitted, in their order. */
  Shares shares(double... row);
}
