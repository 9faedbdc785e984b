package org.comparanda.storage;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.BodyMeasure;
import org.comparanda.register.Restriction;
import org.comparanda.register.Standing;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.SqlStatement;
import org.jdbi.v3.core.statement.Update;

/** The rows of {@code animal_register}; an animal without one is an ordinary one on the shelf. */
final class RegisterRows {
  private static final String KEPT = "KEPT";
  private static final String RETIRED = "RETIRED";
  private static final String MERGED = "MERGED";
  private static final String SET_ASIDE = "SET_ASIDE_";

  /** One row, its values by name. */
  static final String INSERT =
      "insert into animal_register (animal_id, source_name, length_on, length_how, length_kind,"
          + " mass_on, mass_how, mass_kind, permit, permit_words, export, hand_over_by, standing,"
          + " merged_into) values (:id, :source, :lengthOn, :lengthHow, :lengthKind, :massOn,"
          + " :massHow, :massKind, :permit, :words, :export, :handOver, :standing, :into)";

  private RegisterRows() {}

  /** By catalogue number, each with an animal of which only the number is filled in. */
  static Map<String, Row> all(Handle h) {
    Map<String, Row> rows = new HashMap<>();
    h.createQuery("select * from animal_register")
        .map((row, context) -> Map.entry(row.getString("animal_id"), row(row)))
        .forEach(entry -> rows.put(entry.getKey(), entry.getValue()));
    return rows;
  }

  /** Numbers that were merged into another, each with that one. */
  static Map<AnimalId, AnimalId> secondNumbers(Handle h) {
    Map<AnimalId, AnimalId> numbers = new HashMap<>();
    h.createQuery(
            "select animal_id, merged_into from animal_register where merged_into is not null")
        .map(
            (row, context) ->
                Map.entry(
                    new AnimalId(row.getString("animal_id")),
                    new AnimalId(row.getString("merged_into"))))
        .forEach(pair -> numbers.put(pair.getKey(), pair.getValue()));
    return numbers;
  }

  static Optional<Row> one(Handle h, AnimalId id) {
    return h.createQuery("select * from animal_register where animal_id = :id")
        .bind("id", id.value())
        .map((row, context) -> row(row))
        .findOne();
  }

  /** What the register adds to an animal. */
  record Row(
      String sourceName,
      BodyMeasure length,
      BodyMeasure mass,
      Restriction restriction,
      Standing standing) {
    AnimalCard of(Animal animal) {
      return new AnimalCard(animal, sourceName, length, mass, restriction, standing);
    }
  }

  static AnimalCard card(Animal animal, Optional<Row> row) {
    return row.map(r -> r.of(animal)).orElseGet(() -> AnimalCard.of(animal));
  }

  static void write(Handle h, AnimalCard card) {
    h.createUpdate("delete from animal_register where animal_id = :id")
        .bind("id", card.id().value())
        .execute();
    if (card.equals(AnimalCard.of(card.animal()))) {
      return;
    }
    try (Update insert = h.createUpdate(INSERT)) {
      bound(card, insert).execute();
    }
  }

  /** Fills the fields of a card's row. */
  static <S extends SqlStatement<S>> S bound(AnimalCard card, S statement) {
    return statement
        .bind("id", card.id().value())
        .bind("source", card.sourceName())
        .bind("lengthOn", card.length().on().map(LocalDate::toString))
        .bind("lengthHow", card.length().how())
        .bind("lengthKind", card.length().kind().name())
        .bind("massOn", card.mass().on().map(LocalDate::toString))
        .bind("massHow", card.mass().how())
        .bind("massKind", card.mass().kind().name())
        .bind("permit", card.restriction().permit())
        .bind("words", card.restriction().words())
        .bind("export", card.restriction().export().name())
        .bind("handOver", card.restriction().handOverBy().map(LocalDate::toString))
        .bind("standing", word(card.standing()))
        .bind("into", card.standing().mergedInto().map(AnimalId::value));
  }

  private static String word(Standing standing) {
    if (standing instanceof Standing.SetAside aside) {
      return SET_ASIDE + word(aside.before());
    }
    return standing.onTheShelf() ? KEPT : standing.mergedInto().isPresent() ? MERGED : RETIRED;
  }

  private static Row row(ResultSet row) throws SQLException {
    return new Row(
        row.getString("source_name"),
        measure(row, "length"),
        measure(row, "mass"),
        new Restriction(
            row.getString("permit"),
            row.getString("permit_words"),
            Restriction.Export.valueOf(row.getString("export")),
            day(row, "hand_over_by")),
        standing(row));
  }

  private static BodyMeasure measure(ResultSet row, String what) throws SQLException {
    return new BodyMeasure(
        day(row, what + "_on"),
        row.getString(what + "_how"),
        BodyMeasure.Kind.valueOf(row.getString(what + "_kind")));
  }

  private static Optional<LocalDate> day(ResultSet row, String column) throws SQLException {
    return Optional.ofNullable(row.getString(column)).map(LocalDate::parse);
  }

  private static Standing standing(ResultSet row) throws SQLException {
    String word = row.getString("standing");
    return word.startsWith(SET_ASIDE)
        ? new Standing.SetAside(standing(word.substring(SET_ASIDE.length()), row))
        : standing(word, row);
  }

  private static Standing standing(String word, ResultSet row) throws SQLException {
    return switch (word) {
      case RETIRED -> new Standing.Retired();
      case MERGED -> new Standing.MergedInto(new AnimalId(row.getString("merged_into")));
      default -> new Standing.Kept();
    };
  }
}
