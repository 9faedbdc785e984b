package org.comparanda.sizeestimate;

/** What kind of size a quantity is, for the words of more and less. */
public enum Dimension {
  LENGTH("longer", "longest", "shorter", "shortest"),
  MASS("heavier", "heaviest", "lighter", "lightest"),
  SIZE("larger", "largest", "smaller", "smallest");

  final String more;
  final String most;
  final String less;
  final String least;

  Dimension(String more, String most, String less, String least) {
    this.more = more;
    this.most = most;
    this.less = less;
    this.least = least;
  }
}
