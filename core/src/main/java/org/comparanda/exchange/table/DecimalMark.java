package org.comparanda.exchange.table;

/** What stands before the decimals of a number. */
public enum DecimalMark {
  POINT('.', "point"),
  COMMA(',', "comma");

  private final char sign;
  private final String word;

  DecimalMark(char sign, String word) {
    this.sign = sign;
    this.word = word;
  }

  char sign() {
    return sign;
  }

  /** The word for it. */
  public String word() {
    return word;
  }
}
