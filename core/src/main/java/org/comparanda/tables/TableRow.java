package org.comparanda.tables;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;

/** One row of a reference table; every field is read by name, and a wrong one says where it is. */
final class TableRow {
  private final String place;
  private final JsonNode node;
  private final Locale language;

  /**
   * @param language language of what is said: a field {@code name} is read from {@code name_de} in
   *     German where the row has one
   */
  TableRow(String place, JsonNode node, Locale language) {
    this.place = place;
    this.node = node;
    this.language = language;
  }

  /** Where the row stands: file, list and number. */
  String place() {
    return place;
  }

  /** A text that must not be blank. */
  String text(String field) {
    String value = textOrEmpty(field);
    if (value.isBlank()) {
      throw broken(field, "A text is missing");
    }
    return value;
  }

  /** A text that may be empty but must be there. */
  String textOrEmpty(String field) {
    JsonNode value = field(field);
    if (!value.isTextual()) {
      throw broken(field, "Not a text: " + value);
    }
    return value.textValue();
  }

  /** The language of what is said. */
  Locale language() {
    return language;
  }

  /** The name of the field that says this in the language of the file. */
  String said(String field) {
    String own = field + "_" + language.getLanguage();
    return has(own) ? own : field;
  }

  /** Whether the field is there and not null. */
  boolean has(String field) {
    return node.hasNonNull(field);
  }

  double number(String field) {
    return number(field, field(field));
  }

  OptionalDouble optionalNumber(String field) {
    return has(field) ? OptionalDouble.of(number(field)) : OptionalDouble.empty();
  }

  boolean truth(String field) {
    JsonNode value = field(field);
    if (!value.isBoolean()) {
      throw broken(field, "Not true or false: " + value);
    }
    return value.booleanValue();
  }

  List<String> texts(String field) {
    List<String> texts = new ArrayList<>();
    for (JsonNode value : list(field)) {
      if (!value.isTextual()) {
        throw broken(field, "Not a text: " + value);
      }
      texts.add(value.textValue());
    }
    return texts;
  }

  /** Exactly {@code count} numbers. */
  List<Double> numbers(String field, int count) {
    List<Double> numbers = new ArrayList<>();
    for (JsonNode value : list(field)) {
      numbers.add(number(field, value));
    }
    if (numbers.size() != count) {
      throw broken(field, count + " numbers are needed, got " + numbers.size());
    }
    return numbers;
  }

  Map<String, Integer> counts(String field) {
    JsonNode value = field(field);
    if (!value.isObject()) {
      throw broken(field, "Not a list of counts by group: " + value);
    }
    Map<String, Integer> counts = new LinkedHashMap<>();
    value
        .properties()
        .forEach(
            e -> {
              if (!e.getValue().isInt() || e.getValue().intValue() < 1) {
                throw broken(field + "." + e.getKey(), "Not a count: " + e.getValue());
              }
              counts.put(e.getKey(), e.getValue().intValue());
            });
    return counts;
  }

  <T extends Enum<T>> T word(String field, Class<T> words) {
    return word(field, text(field), words);
  }

  <T extends Enum<T>> List<T> words(String field, Class<T> words) {
    return texts(field).stream().map(text -> word(field, text, words)).toList();
  }

  /** Rows within this row. */
  List<TableRow> rows(String field) {
    List<TableRow> rows = new ArrayList<>();
    for (JsonNode row : list(field)) {
      rows.add(new TableRow(place + ", " + field + " " + (rows.size() + 1), row, language));
    }
    return rows;
  }

  /** What to throw when a field reads well but makes no sense. */
  BrokenTable broken(String field, String what) {
    return new BrokenTable(place + ", field " + field, what);
  }

  private <T extends Enum<T>> T word(String field, String text, Class<T> words) {
    return Arrays.stream(words.getEnumConstants())
        .filter(w -> w.name().equals(text))
        .findFirst()
        .orElseThrow(
            () ->
                broken(
                    field,
                    "\"" + text + "\" is not one of " + Arrays.toString(words.getEnumConstants())));
  }

  private double number(String field, JsonNode value) {
    if (!value.isNumber() || !Double.isFinite(value.doubleValue())) {
      throw broken(field, "Not a number: " + value);
    }
    return value.doubleValue();
  }

  private JsonNode list(String field) {
    JsonNode value = field(field);
    if (!value.isArray()) {
      throw broken(field, "Not a list: " + value);
    }
    return value;
  }

  private JsonNode field(String field) {
    JsonNode value = node.path(field);
    if (value.isMissingNode() || value.isNull()) {
      throw broken(field, "The field is missing");
    }
    return value;
  }
}
