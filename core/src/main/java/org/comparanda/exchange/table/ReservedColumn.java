package org.comparanda.exchange.table;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Columns whose header has a meaning of its own; every other one is a measurement. */
public enum ReservedColumn {
  ANIMAL,
  BONE,
  TAXON,
  ELEMENT,
  SIDE,
  PORTION,
  SEX,
  AGE_CLASS,
  ORIGIN,
  DRAWER,
  FLAGS,
  REMARKS,
  FUSION_PROXIMAL,
  FUSION_DISTAL,
  BODY_LENGTH,
  BODY_MASS;

  /** The header. */
  public String header() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }

  /** Whether its cells are numbers. */
  boolean numeric() {
    return this == BODY_LENGTH || this == BODY_MASS;
  }

  static Optional<ReservedColumn> ofHeader(String header) {
    return Arrays.stream(values()).filter(c -> c.header().equalsIgnoreCase(header)).findFirst();
  }

  static List<String> headers() {
    return Arrays.stream(values()).map(ReservedColumn::header).toList();
  }
}
