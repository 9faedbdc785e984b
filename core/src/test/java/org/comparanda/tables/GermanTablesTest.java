package org.comparanda.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.MeasurementCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the tables say to a person stands in English and in German, row by row. */
class GermanTablesTest {
  @ParameterizedTest
  @CsvSource({
    "measurements,name",
    "measurements,definition",
    "measurements,mistakes",
    "outlines,caption",
    "equations,name",
    "equations,appliesTo",
    "equations,predictor",
    "equations,caution",
    "equations,howVerified",
    "traits,look",
    "traits,question",
    "traits,source",
    "taxa,commonName",
    "element-key,hint",
    "element-key,text",
    "element-key,sentence"
  })
  void everyRowThatSaysItInEnglishSaysItInGerman(String table, String field) throws IOException {
    List<JsonNode> rows = new ArrayList<>();
    try (InputStream in = ReferenceTables.class.getResourceAsStream(table + ".json")) {
      having(field, new ObjectMapper().readTree(in), rows);
    }
    assertFalse(rows.isEmpty());
    for (JsonNode row : rows) {
      JsonNode german = row.path(field + "_de");
      assertEquals(row.get(field).getNodeType(), german.getNodeType(), row.toString());
      assertEquals(row.get(field).size(), german.size(), row.toString());
      assertFalse(german.isTextual() && german.asText().isBlank(), row.toString());
    }
  }

  @Test
  void everyQuestionOfTheBoneKeyIsAskedInGerman() {
    List<String> english =
        ReferenceTables.shipped().whichBone().questions().stream().map(q -> q.text()).toList();
    List<String> german =
        ReferenceTables.shipped(Locale.GERMAN).whichBone().questions().stream()
            .map(q -> q.text())
            .filter(text -> !english.contains(text))
            .toList();
    assertEquals(english.size(), german.size());
  }

  @Test
  void aMeasurementIsNamedInTheLanguageAskedFor() {
    assertEquals("größte Breite des distalen Endes", name(Locale.GERMANY));
    assertEquals("greatest breadth of the lower end", name(Locale.UK));
    assertEquals("greatest breadth of the lower end", name(Locale.KOREAN));
  }

  private static String name(Locale language) {
    return ReferenceTables.shipped(language)
        .protocol()
        .measurement(new ElementKey("humerus"), new MeasurementCode("Bd"))
        .map(Measurement::name)
        .orElseThrow();
  }

  private static void having(String field, JsonNode node, List<JsonNode> rows) {
    if (node.has(field)) {
      rows.add(node);
    }
    node.forEach(inner -> having(field, inner, rows));
  }
}
