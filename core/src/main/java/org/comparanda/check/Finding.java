package org.comparanda.check;

import java.util.Optional;

/**
 * One thing that a keeper should look at. A finding accuses nobody: it may be accepted with a
 * reason.
 *
 * @param animal catalogue number; empty where the finding is about a taxon or a whole column
 * @param bone element and side, or "all" for every bone of the animal; empty as above
 * @param column code or name of the column; empty where no single one is meant
 * @param value the text in question; empty where there is none
 * @param message what is odd, one sentence
 * @param remedy what to do, one sentence
 * @param basis all that it rests on where one value doesn't say it; an acceptance holds for that
 * @param correction the remedy ready to be done; empty where somebody must look or measure first
 */
public record Finding(
    FindingKind kind,
    Optional<String> animal,
    Optional<String> bone,
    Optional<String> column,
    Optional<String> value,
    String message,
    String remedy,
    Optional<String> basis,
    Optional<Correction> correction) {
  /** One that rests on its value alone and proposes nothing that could be done at once. */
  public Finding(
      FindingKind kind,
      Optional<String> animal,
      Optional<String> bone,
      Optional<String> column,
      Optional<String> value,
      String message,
      String remedy) {
    this(kind, animal, bone, column, value, message, remedy, Optional.empty(), Optional.empty());
  }

  /** The same, resting on more than its value. */
  Finding restingOn(String other) {
    return new Finding(
        kind, animal, bone, column, value, message, remedy, Optional.of(other), correction);
  }

  /** The same with its remedy ready to be done. */
  Finding correctedBy(Optional<Correction> other) {
    return new Finding(kind, animal, bone, column, value, message, remedy, basis, other);
  }

  /** About one value of one bone. */
  static Finding ofValue(
      FindingKind kind, BoneEntry entry, String column, double mm, String message, String remedy) {
    return new Finding(
        kind,
        Optional.of(entry.animal()),
        Optional.of(entry.bone()),
        Optional.of(column),
        Optional.of(Millimetres.number(mm)),
        message,
        remedy);
  }

  /** About an animal, or one bone of it. */
  static Finding ofAnimal(
      FindingKind kind,
      String animal,
      String bone,
      String column,
      String value,
      String message,
      String remedy) {
    return new Finding(
        kind,
        Optional.of(animal),
        Optional.of(bone),
        Optional.of(column),
        Optional.of(value),
        message,
        remedy);
  }

  /** About a taxon or a whole column. */
  static Finding ofColumn(
      FindingKind kind, String column, String value, String message, String remedy) {
    return new Finding(
        kind,
        Optional.empty(),
        Optional.empty(),
        Optional.of(column),
        Optional.of(value),
        message,
        remedy);
  }
}
