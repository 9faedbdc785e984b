package org.comparanda.oldcards;

/** What a piece of a card's text is about. */
public enum Part {
  TAXON,
  QUALIFIER,
  ELEMENT,
  SIDE,
  PORTION,
  FLAG,
  COUNT,
  MEASUREMENT,
  UNIT,
  PLACE,
  PASSED_OVER,
  HUMAN,
  LEFT_OVER
}
