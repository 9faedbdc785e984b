package org.comparanda.exchange.table;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.LengthUnit;
import org.comparanda.reference.Shelf;
import org.comparanda.tables.ReferenceTables;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Columns in a wrong unit, with no collection to compare with (issue 3, "Bad input"): every column
 * of the simulated Harrowmere shelf in turn, and measured turtles.
 */
class UnitDoubtTest {
  private static final ReferenceTables TABLES = ReferenceTables.shipped();
  private static final Path DEMO = Path.of("..", "demo-data");
  private static final Path OUTSIDE = Path.of("src", "test", "resources", "outside", "data");

  /** Straight carapace length, width and height are what the table of turtles holds. */
  private static final TableOptions TURTLES =
      TableOptions.withDefaults()
          .withUnknown(TableOptions.Unknown.REGISTER)
          .withElement(new ElementKey("carapace"))
          .withAs(
              Map.of(
                  "animal",
                  "id",
                  "taxon",
                  "sex",
                  "SCL",
                  "length_mm",
                  "SCW",
                  "width_mm",
                  "SH",
                  "height_mm"));

  @TempDir Path folder;

  static Stream<Arguments> everyColumnInCentimetresAndInInches() throws IOException {
    return measuredHeaders(DEMO.resolve("shelf.csv")).stream()
        .flatMap(
            header ->
                Stream.of(LengthUnit.CENTIMETRE, LengthUnit.INCH)
                    .map(unit -> Arguments.of(header, unit)));
  }

  @ParameterizedTest
  @MethodSource("everyColumnInCentimetresAndInInches")
  void oneColumnInAnotherUnitIsRefusedWithItsUnitAndNoOther(String header, LengthUnit unit)
      throws IOException {
    Path table = converted(DEMO.resolve("shelf.csv"), header::equals, unit);
    String code = header.replace(" [mm]", "");
    assertAll(
        () ->
            assertEquals(
                List.of(header + " -> --unit " + code + "=" + unit.symbol()),
                doubts(TableOptions.withDefaults(), table)),
        () ->
            assertEquals(
                List.of(), doubts(TableOptions.withDefaults().withUnit(code, unit), table)));
  }

  @ParameterizedTest
  @CsvSource({"CENTIMETRE", "INCH"})
  void allColumnsInAnotherUnitAreRefusedAgainstTheAnimalsBodies(LengthUnit unit)
      throws IOException {
    List<String> headers = measuredHeaders(DEMO.resolve("shelf.csv"));
    Path measured = converted(DEMO.resolve("shelf.csv"), headers::contains, unit);
    Path lengthsToo =
        converted(
            DEMO.resolve("shelf.csv"),
            h -> headers.contains(h) || h.equals("body_length [mm]"),
            unit);
    assertAll(
        () ->
            assertEquals(
                headers,
                doubts(TableOptions.withDefaults(), measured).stream()
                    .map(d -> d.replaceFirst(" -> --unit \\S+=(cm|in)$", ""))
                    .toList()),
        () -> assertFalse(doubts(TableOptions.withDefaults(), lengthsToo).isEmpty()));
  }

  @ParameterizedTest
  @CsvSource({"CENTIMETRE", "INCH"})
  void withoutAnyBodyTheSmallBonesOfTheTableStillGiveItAway(LengthUnit unit) throws IOException {
    List<String> headers = measuredHeaders(DEMO.resolve("shelf.csv"));
    Path table = converted(DEMO.resolve("shelf.csv"), headers::contains, unit);
    TableOptions noBody =
        TableOptions.withDefaults()
            .withOnly(headers.stream().map(h -> h.replace(" [mm]", "")).toList())
            .withAs(Map.of("body_mass", "none", "body_length", "none"));
    assertFalse(doubts(noBody, table).isEmpty());
  }

  @ParameterizedTest
  @CsvSource({"easy", "hard", "messy", "fossil"})
  void theDemoTraysAreNotDoubted(String tray) {
    Shelf none = new Shelf(List.of());
    assertEquals(
        List.of(),
        TableReader.of(TABLES.protocol(), TABLES.taxa(), TableOptions.withDefaults())
            .bones(none, DEMO.resolve("tray-" + tray + ".csv"))
            .fold(read -> List.of(), ProblemReport::lines));
  }

  @Test
  void theDemoShelfIsNotDoubted() {
    assertEquals(List.of(), doubts(TableOptions.withDefaults(), DEMO.resolve("shelf.csv")));
  }

  /** Jolicoeur and Mosimann 1960, Growth 24:339-354: 48 turtles in mm (outside/PROVENANCE.md). */
  @Test
  void measuredTurtlesAreDoubtedInCentimetresAndNotInMillimetres() throws IOException {
    Path turtles = OUTSIDE.resolve("tortues.csv");
    Path height = converted(turtles, "height_mm"::equals, LengthUnit.CENTIMETRE);
    assertAll(
        () -> assertEquals(List.of(), doubts(TURTLES, turtles)),
        () -> assertEquals(List.of("height_mm -> --unit SH=cm"), doubts(TURTLES, height)));
  }

  @ParameterizedTest
  @CsvSource({
    "iris.csv, species, id, sepal_length petal_length petal_width",
    "crabs.csv, group, id, FL RW CL CW BD",
    "penguins.csv, species, id, bill_length bill_depth flipper_length",
    "microtus_reference.csv, species, id, M1Left Foramen Pbone Length Height Rostrum",
    "wolves.csv, group, id, palatal_length zygomatic_width crown_length",
    "corvus.csv, stock, name, wing_mm bill_mm",
    "midge.csv, species, id, antenna_length wing_length"
  })
  void outsideTablesThatRegisterTheirMeasurementsAreNotDoubted(
      String file, String taxon, String animal, String measured) {
    TableOptions options =
        TableOptions.withDefaults()
            .withUnknown(TableOptions.Unknown.REGISTER)
            .withOnly(List.of(measured.split(" ")))
            .withAs(Map.of("taxon", taxon, "animal", animal));
    assertEquals(List.of(), doubts(options, OUTSIDE.resolve(file)));
  }

  private static List<String> doubts(TableOptions options, Path table) {
    return TableReader.of(TABLES.protocol(), TABLES.taxa(), options)
        .shelf(table)
        .fold(
            read -> List.of(),
            report ->
                report.problems().stream()
                    .map(
                        p ->
                            p.column().orElse(p.sentence())
                                + " -> "
                                + p.remedy()
                                    .replaceFirst(
                                        "Say (--unit \\S+) if it is, or --as-is .*", "$1"))
                    .toList());
  }

  private static List<String> measuredHeaders(Path table) throws IOException {
    return rows(table).get(0).stream()
        .filter(h -> h.endsWith(" [mm]") && !h.startsWith("body"))
        .toList();
  }

  private static List<List<String>> rows(Path table) throws IOException {
    try (CsvReader<CsvRecord> reader = CsvReader.builder().ofCsvRecord(table)) {
      return reader.stream().map(CsvRecord::getFields).toList();
    }
  }

  /** The same table with its headers as they were and the numbers of some columns in the unit. */
  private Path converted(Path table, Predicate<String> which, LengthUnit unit) throws IOException {
    List<List<String>> rows = rows(table);
    List<String> header = rows.get(0);
    Path to = Files.createTempFile(folder, "converted", ".csv");
    try (CsvWriter writer = CsvWriter.builder().build(to)) {
      writer.writeRecord(header);
      for (List<String> row : rows.subList(1, rows.size())) {
        List<String> cells = new ArrayList<>(row);
        for (int i = 0; i < cells.size(); i++) {
          if (which.test(header.get(i)) && !cells.get(i).isEmpty()) {
            cells.set(
                i,
                String.format(
                    Locale.ROOT, "%.4f", Double.parseDouble(cells.get(i)) / unit.millimetres()));
          }
        }
        writer.writeRecord(cells);
      }
    }
    return to;
  }

  /**
   * Bill lengths of the outside penguins, every tenth row put in inches: 35 rows of 344, none of
   * them without a value (counted in penguins.csv; see outside/PROVENANCE.md).
   */
  @Test
  void rowsInInchesAreSaidBeforeTheTableIsStored() throws IOException {
    List<String> rows = new ArrayList<>(List.of("animal,taxon,element,bill_length,bill_depth"));
    try (CsvReader<CsvRecord> table =
        CsvReader.builder().ofCsvRecord(OUTSIDE.resolve("penguins.csv"))) {
      table.stream()
          .skip(1)
          .forEach(
              row ->
                  rows.add(
                      String.join(
                          ",",
                          row.getField(0),
                          row.getField(1),
                          "skull",
                          rows.size() % 10 == 1 ? inches(row.getField(5)) : row.getField(5),
                          row.getField(6))));
    }
    Path file = Files.write(folder.resolve("inches.csv"), rows);
    TableOptions options = TableOptions.withDefaults().withUnknown(TableOptions.Unknown.REGISTER);
    List<String> notes =
        TableReader.of(TABLES.protocol(), TABLES.taxa(), options)
            .cardsFor(new Shelf(List.of()), file)
            .fold(read -> read.facts().notes(), refused -> refused.lines());
    assertEquals(
        List.of(
            "35 values look like another unit, the first: bill_length 1.539 of p001, skull axial. Once"
                + " the table is stored, the check of the shelf lists each."),
        notes);
  }

  private static String inches(String mm) {
    return String.format(Locale.ROOT, "%.3f", Double.parseDouble(mm) / 25.4);
  }
}
