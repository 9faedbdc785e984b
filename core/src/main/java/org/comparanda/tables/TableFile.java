package org.comparanda.tables;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** One JSON file of the reference tables: an object whose lists hold rows. */
final class TableFile {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final String name;
  private final JsonNode root;
  private final Locale language;

  private TableFile(String name, JsonNode root, Locale language) {
    this.name = name;
    this.root = root;
    this.language = language;
  }

  /** A file packed beside this class, read in English. Errors: {@link BrokenTable}. */
  static TableFile shipped(String name) {
    return shipped(name, Locale.ENGLISH);
  }

  /** A file packed beside this class, its sentences in a language. Errors: {@link BrokenTable}. */
  static TableFile shipped(String name, Locale language) {
    try (@Nullable InputStream in = TableFile.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new BrokenTable(name, "The file is missing from the program");
      }
      return of(name, new String(in.readAllBytes(), StandardCharsets.UTF_8), language);
    } catch (IOException e) {
      throw new UncheckedIOException(name + " could not be read.", e);
    }
  }

  /** A file from its text, read in English. Errors: {@link BrokenTable} if it is no JSON object. */
  static TableFile of(String name, String text) {
    return of(name, text, Locale.ENGLISH);
  }

  private static TableFile of(String name, String text, Locale language) {
    try {
      JsonNode root = JSON.readTree(text);
      if (!root.isObject()) {
        throw new BrokenTable(name, "The file does not hold one JSON object");
      }
      return new TableFile(name, root, language);
    } catch (JsonProcessingException e) {
      int line = e.getLocation() == null ? 0 : e.getLocation().getLineNr();
      throw new BrokenTable(name + ", line " + line, "This is not JSON: " + e.getOriginalMessage());
    }
  }

  /** A text beside the lists. Errors: {@link BrokenTable}. */
  String text(String field) {
    return new TableRow(name, root, language).text(field);
  }

  /** The rows of one list, in the order of the file. Errors: {@link BrokenTable}. */
  List<TableRow> rows(String list) {
    JsonNode node = root.path(list);
    if (!node.isArray()) {
      throw new BrokenTable(name + ", field " + list, "A list of rows is missing");
    }
    List<TableRow> rows = new ArrayList<>();
    for (JsonNode row : node) {
      rows.add(new TableRow(name + ", " + list + " row " + (rows.size() + 1), row, language));
    }
    return List.copyOf(rows);
  }
}
