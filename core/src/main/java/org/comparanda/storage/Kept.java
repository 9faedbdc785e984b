package org.comparanda.storage;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One kind of thing that the Day Book keeps: every row of its table is known to the book by a word
 * and its key.
 *
 * @param word what the book calls it
 * @param table where it stands
 * @param key the column that names a row
 * @param apart columns that may change without the book, such as a name that can be blanked
 * @param parts tables whose rows belong to it, with the column that points at it and their order
 * @param made what such a row says by itself
 */
record Kept(String word, String table, String key, Set<String> apart, List<Part> parts, Made made) {
  static final Kept PERSON =
      new Kept("person", "person", "id", Set.of("name"), List.of(), Made.SILENT);
  static final Kept ANIMAL =
      new Kept(
          "animal",
          "animal",
          "id",
          Set.of(),
          List.of(
              new Part("shelf_bone", "animal_id", "animal_id, position"),
              new Part("shelf_reading", "animal_id", "animal_id, position, code"),
              new Part("shelf_correction", "animal_id", "animal_id, number"),
              new Part("animal_register", "animal_id", "animal_id")),
          Made.SILENT);
  static final Kept SHELF = plain("shelf", "shelf_change", "version");
  static final Kept TAXON = plain("taxon", "house_taxon", "name");
  static final Kept TRAY = plain("tray", "tray", "id");
  static final Kept BONE = plain("bone", "tray_bone", "id");
  static final Kept READING =
      made("reading", "reading", "id", "person_id", "bone_id || ' ' || code || ' ' || as_typed");
  static final Kept CALL =
      made(
          "call", "bone_call", "id", "person_id", "bone_id || ': ' || coalesce(as_written, taxon)");
  static final Kept CALIPER = plain("caliper", "caliper_card", "name");
  static final Kept ACCEPTED = plain("accepted finding", "accepted_finding", "number");
  static final Kept LOT = plain("lot", "lot", "id");
  static final Kept ELEMENT_CALL =
      made(
          "element call",
          "element_call",
          "id",
          "person_id",
          "bone_id || ': ' || lower(side) || ' ' || element");
  static final Kept SCRAP = made("scrap", "scrap", "id", "person_id", "tray_id || ': ' || pieces");
  static final Kept STOP =
      made(
          "stop",
          "stop_record",
          "id",
          "person_id",
          "bone_id || ': ' || lower(replace(kind, '_', ' '))");
  static final Kept RIGHT =
      made(
          "right",
          "right_given",
          "id",
          "by_id",
          "lower(kind) || ' ' || lower(what) || ' ' || person_id");
  static final Kept RULE =
      made(
          "rule",
          "house_rule",
          "id",
          "person_id",
          "lower(replace(name, '_', '-')) || ': ' || content");
  static final Kept DRAW = plain("draw", "second_look_draw", "position");
  static final Kept NUMBER_RULE = plain("number rule", "number_rule", "tray_id");
  static final Kept NUMBER = plain("number", "number_given", "bone_id");
  static final Kept ASSOCIATION = plain("association of", "association_bone", "bone_id");
  static final Kept REFIT = plain("refit", "refit", "bone_id");
  static final Kept OLD_CARD = plain("old card", "old_card", "number");
  static final Kept CARD_DECISION =
      made("card decision", "old_card_decision", "number", "person_id", "number");
  static final Kept MAPPING = plain("mapping", "table_mapping", "name");
  static final Kept IMPORTED = plain("imported table", "imported_table", "content");
  static final Kept ARRIVAL = plain("arrival", "arrival", "number");
  static final Kept INTEREST =
      made("interest", "arrival_interest", "number", "person_id", "reason");
  static final Kept SKELETON_BONE = plain("skeleton bone", "skeleton_bone", "id");
  static final Kept PHOTO = made("photo", "photo", "id", "person_id", "id");

  /** Everything that the book keeps. A new table goes here or among those left out. */
  static final List<Kept> ALL =
      List.of(
          PERSON,
          ANIMAL,
          SHELF,
          TAXON,
          TRAY,
          BONE,
          READING,
          CALL,
          CALIPER,
          ACCEPTED,
          LOT,
          ELEMENT_CALL,
          SCRAP,
          STOP,
          RIGHT,
          RULE,
          DRAW,
          NUMBER_RULE,
          NUMBER,
          ASSOCIATION,
          REFIT,
          OLD_CARD,
          CARD_DECISION,
          MAPPING,
          IMPORTED,
          ARRIVAL,
          INTEREST,
          SKELETON_BONE,
          PHOTO);

  /** Tables that the book does not keep, each with the reason. */
  static final Map<String, String> LEFT_OUT =
      Map.of(
          "day_book", "it is the book",
          "keying_batch", "what a bench is about, until it is done",
          "keying_pair", "what a bench is about, until it is done",
          "beside_call", "what the numbers said beside a call; wiped when a bone may be human",
          "kept_answer", "what the numbers said of a bone; wiped when it may be human",
          "draft", "half-typed text, which becomes a reading or is dropped");

  /**
   * What a row that is never changed says by itself.
   *
   * @param person the column that says who made it; empty where only the book's entry says so
   * @param says an expression over its columns that says what it is
   */
  record Made(String person, String says) {
    static final Made SILENT = new Made("", "''");
  }

  /** Rows of another table that belong to a row of this one. */
  record Part(String table, String pointer, String order) {}

  private static Kept plain(String word, String table, String key) {
    return new Kept(word, table, key, Set.of(), List.of(), Made.SILENT);
  }

  private static Kept made(String word, String table, String key, String person, String says) {
    return new Kept(word, table, key, Set.of(), List.of(), new Made(person, says));
  }

  /** The kind that a subject is of: the one with the longest word that it begins with. */
  static Optional<Kept> of(String subject) {
    return ALL.stream()
        .filter(kept -> subject.startsWith(kept.word() + " "))
        .max(Comparator.comparing(kept -> kept.word().length()));
  }

  /** The key in a subject of this kind. */
  String keyIn(String subject) {
    return subject.substring(word.length() + 1);
  }

  /** What the book calls the row with this key. */
  String subject(Object keyValue) {
    return word + " " + keyValue;
  }
}
