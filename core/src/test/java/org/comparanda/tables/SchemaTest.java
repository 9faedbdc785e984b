package org.comparanda.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The schema beside each table names exactly the fields that its rows have. */
class SchemaTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "column-words",
        "traits",
        "skeleton-groups",
        "elements",
        "measurements",
        "outlines",
        "taxa",
        "equations"
      })
  void everyRowHasTheFieldsOfItsSchema(String table) throws IOException {
    JsonNode schema = read(table + ".schema.json");
    JsonNode file = read(table + ".json");
    for (var list : schema.get("properties").properties()) {
      if (list.getValue().path("type").asText().equals("array")) {
        String definition = list.getValue().get("items").get("$ref").asText().substring(8);
        Set<String> fields = names(schema.get("$defs").get(definition).get("properties"));
        assertTrue(file.get(list.getKey()).size() > 0, list.getKey());
        for (JsonNode row : file.get(list.getKey())) {
          assertEquals(fields, names(row), table + ", " + list.getKey());
        }
      }
    }
  }

  private static Set<String> names(JsonNode object) {
    Set<String> names = new TreeSet<>();
    object.fieldNames().forEachRemaining(names::add);
    return names;
  }

  private static JsonNode read(String name) throws IOException {
    try (InputStream in = ReferenceTables.class.getResourceAsStream(name)) {
      return new ObjectMapper().readTree(in);
    }
  }
}
