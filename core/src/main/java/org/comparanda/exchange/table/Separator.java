package org.comparanda.exchange.table;

/** What stands between the columns of a table. */
public enum Separator {
  COMMA(',', "comma"),
  SEMICOLON(';', "semicolon"),
  TAB('\t', "tab");

  private final char sign;
  private final String word;

  Separator(char sign, String word) {
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
