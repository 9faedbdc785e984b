package org.comparanda.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class BrokenTableTest {
  private static final String HUMERUS =
      """
      {"key": "humerus", "name": "humerus", "region": "fore limb", "symmetry": "SIDED",
       "perSkeleton": {}, "growingEnds": [], "ontologyId": "", "source": "made for this test"}
      """;

  @Test
  void aWrongWordIsQuotedWithFileRowAndField() {
    String text = "{\"elements\": [" + HUMERUS.replace("SIDED", "sidet") + "]}";
    assertEquals(
        "\"sidet\" is not one of [SIDED, AXIAL] (elements.json, elements row 1, field symmetry)."
            + " None of the reference tables was used. Correct that field and start again.",
        message("elements.json", text));
  }

  @Test
  void aKeyThatStandsTwiceIsNamed() {
    String text = "{\"elements\": [" + HUMERUS + "," + HUMERUS + "]}";
    assertTrue(
        message("elements.json", text)
            .startsWith("\"humerus\" stands twice (elements.json, elements row 2, field key)"));
  }

  @Test
  void aMissingFieldIsNamed() {
    String text = "{\"elements\": [" + HUMERUS.replace("\"region\"", "\"place\"") + "]}";
    assertTrue(
        message("elements.json", text)
            .startsWith("The field is missing (elements.json, elements row 1, field region)"));
  }

  @Test
  void textThatIsNotJsonIsSaidWithItsLine() {
    assertTrue(message("elements.json", "{\n\"elements\": [,]}").contains("elements.json, line 2"));
  }

  @Test
  void aMeasurementOfAnUnknownElementIsRefused() {
    String text =
        """
        {"measurements": [{"element": "humerius", "code": "GL"}], "partRules": []}
        """;
    TableFile elements = TableFile.of("elements.json", "{\"elements\": [" + HUMERUS + "]}");
    TableFile measurements = TableFile.of("measurements.json", text);
    BrokenTable broken =
        assertThrows(BrokenTable.class, () -> ProtocolTables.read(elements, measurements));
    assertTrue(
        String.valueOf(broken.getMessage())
            .startsWith(
                "\"humerius\" is no element of the protocol"
                    + " (measurements.json, measurements row 1, field element)"));
  }

  private static String message(String file, String text) {
    BrokenTable broken =
        assertThrows(
            BrokenTable.class,
            () ->
                ProtocolTables.read(
                    TableFile.of(file, text),
                    TableFile.of(
                        "measurements.json", "{\"measurements\": [], \"partRules\": []}")));
    return String.valueOf(broken.getMessage());
  }
}
