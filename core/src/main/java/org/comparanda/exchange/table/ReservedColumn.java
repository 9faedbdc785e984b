package org.comparanda.exchange.table;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.comparanda.register.CardField;

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
  ANIMAL_FLAGS,
  ANIMAL_SOURCE,
  ANIMAL_SOURCE_NAME,
  BODY_LENGTH_ON,
  BODY_LENGTH_HOW,
  BODY_LENGTH_KIND,
  BODY_MASS_ON,
  BODY_MASS_HOW,
  BODY_MASS_KIND,
  PERMIT,
  PERMIT_WORDS,
  EXPORT,
  HAND_OVER_BY,
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

  /** The field of an animal's card that it fills as text. */
  Optional<CardField> card() {
    return compareTo(ANIMAL_FLAGS) < 0 || compareTo(HAND_OVER_BY) > 0
        ? Optional.empty()
        : CardField.ofWords(header().replaceFirst("^animal_", ""));
  }

  /** Whether a day may stand in it. */
  boolean day() {
    return this == BODY_LENGTH_ON || this == BODY_MASS_ON || this == HAND_OVER_BY;
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
