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
  BODY_MASS,
  MEASUREMENT,
  VALUE,
  UNIT;

  /** The header. */
  public String header() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }

  /** Whether its cells are numbers. */
  boolean numeric() {
    return this == BODY_LENGTH || this == BODY_MASS || this == VALUE;
  }

  /** Whether it has its meaning only where each row is one reading. */
  boolean ofLongTables() {
    return this == MEASUREMENT || this == VALUE || this == UNIT;
  }

  /** Of a wide table. */
  static Optional<ReservedColumn> ofHeader(String header) {
    return ofLongHeader(header).filter(c -> !c.ofLongTables());
  }

  /** Of a table in which each row is one reading. */
  static Optional<ReservedColumn> ofLongHeader(String header) {
    return Arrays.stream(values()).filter(c -> c.header().equalsIgnoreCase(header)).findFirst();
  }

  static List<String> headers() {
    return Arrays.stream(values())
        .filter(c -> !c.ofLongTables())
        .map(ReservedColumn::header)
        .toList();
  }
}
