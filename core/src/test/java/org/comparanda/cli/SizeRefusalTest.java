package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What {@code size} says where there can be no line or no estimate. Animals are invented. */
class SizeRefusalTest {
  private static final String FIVE =
      """
      animal,taxon,x,z,y
      1,a,10,20,31
      2,b,12,24,35
      3,c,14,28,44
      4,d,17,34,50
      5,e,20,40,61
      """;

  @TempDir Path folder;

  @ParameterizedTest(name = "x = {0}")
  @CsvSource({
    "0, a measurement is above zero",
    "-12, a measurement is above zero",
    "twelve, not a number",
  })
  void aCellThatIsNoMeasurementIsNamedWithItsRowColumnAndValue(String cell, String reason)
      throws IOException {
    Typed typed = size(FIVE.replace("2,b,12,", "2,b," + cell + ","), "--from", "x");
    refused(typed, List.of("shelf.csv", "row 3", "x", "\"" + cell + "\"", reason));
  }

  @Test
  void aUnitThatIsNoneIsNamedWithItsColumn() throws IOException {
    refused(
        size(FIVE.replace("taxon,x,", "taxon,x [furlong],"), "--from", "x"),
        List.of("shelf.csv", "x [furlong]", "not a unit"));
  }

  @Test
  void theJsonSaysWhyThereIsNoLineAndWhatToDo() throws IOException {
    Path json = folder.resolve("out.json");
    size("animal,x,y\n1,10,31\n2,10,35\n3,10,44\n", "--from", "x", "--json", json.toString());
    JsonNode why = new ObjectMapper().readTree(json.toFile()).get("line").get("notEstimable");
    assertEquals("All values of predictor 1 are equal.", why.get("reason").asText());
    assertTrue(why.get("remedy").asText().contains("animals of different size"), why.toString());
  }

  @Test
  void aTaxonThatTheShelfLacksIsNamedWithThoseItHolds() throws IOException {
    refused(
        size(FIVE, "--from", "x", "--taxa", "a,Crocodylidae"),
        List.of("--taxa \"Crocodylidae\"", "no animal on the shelf", "a, b, c, d, e"));
  }

  @Test
  void twoAnimalsAreNoLine() throws IOException {
    refused(
        size(FIVE.substring(0, FIVE.indexOf("3,c")), "--from", "x"),
        List.of("can't be fitted to 2 row(s)", "At least 3 are needed"));
  }

  @Test
  void animalsOfOneSizeAreNoLine() throws IOException {
    refused(
        size("animal,x,y\n1,10,31\n2,10,35\n3,10,44\n4,10,50\n", "--from", "x"),
        List.of("All values of predictor 1 are equal.", "animals of different size"));
  }

  @Test
  void aPredictorThatFollowsFromAnotherIsToBeLeftOut() throws IOException {
    refused(
        size(FIVE, "--from", "x,z"),
        List.of("One predictor follows exactly from the others.", "Leave one of them out."));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "'((a:1,b:1):1,c:2);', '3 tip(s) of the tree have animals.', 'At least 4 are needed'",
    "'((a:1,b:1):1,(c:-1,d:1):1,e:2);', 'the branch length is -1.0.', 'zero or more'",
    "'((a:1,b:1):1,(c,d:1):1,e:2);', 'gives no branch length.', 'all branch lengths'",
    "'((a:0,b:0):0,(c:0,d:0):0,e:0);', 'All branch lengths of the tree are zero.', 'Use a tree'",
    "'((a:1,b:1):1,(c:1,c:1):1,e:2);', '\"c\" stands at two tips', 'Name every tip once.'",
    "'((a:1,b:1):1,(c:1,d:1:1,e:2);', 'can''t be read', 'Newick notation'",
  })
  void aTreeThatCanNotCarryALineSaysWhyAndWhatToDo(String newick, String reason, String remedy)
      throws IOException {
    Path tree = file("tree.nwk", newick);
    refused(
        size(FIVE, "--from", "x", "--line", "pgls", "--tree", tree.toString()),
        List.of(reason, remedy));
  }

  @Test
  void aLineOnATreeWithoutTheTreeAsksForIt() throws IOException {
    refused(
        size(FIVE, "--from", "x", "--line", "pgls"),
        List.of("A line across taxa needs a tree.", "Give a tree in Newick notation."));
  }

  private Typed size(String shelf, String... more) throws IOException {
    java.util.ArrayList<Object> words = new java.util.ArrayList<>(List.of("size", "--shelf"));
    words.add(file("shelf.csv", shelf));
    words.addAll(List.of("--register", "--element", "bone", "--predict", "y"));
    words.addAll(List.of(more));
    return Typed.command(words.toArray());
  }

  private static void refused(Typed typed, List<String> said) {
    assertAll(
        () -> assertEquals(Terminal.NOT_DONE, typed.code(), typed.out()),
        () -> assertEquals("", typed.out()),
        () ->
            said.forEach(
                words -> assertTrue(typed.err().contains(words), words + " in " + typed.err())));
  }

  private Path file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }
}
