package org.comparanda.tray;

/** Qualifiers of open nomenclature; NONE for a bare name. */
public enum Qualifier {
  NONE(""),
  CF("cf."),
  AFF("aff."),
  SP("sp."),
  INDET("indet."),
  GEN_ET_SP_INDET("gen. et sp. indet."),
  UNCERTAIN("?");

  private final String sign;

  Qualifier(String sign) {
    this.sign = sign;
  }

  /** The sign as written beside the name. */
  public String sign() {
    return sign;
  }
}
