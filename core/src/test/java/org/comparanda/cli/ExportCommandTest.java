package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.parsers.DocumentBuilderFactory;
import org.comparanda.storage.Collection;
import org.comparanda.tray.Keeping;
import org.comparanda.tray.Qualifier;
import org.comparanda.tray.TrayBone;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * The exports. The archive is read back by the JDK's XML parser and a plain reading of quoted CSV,
 * held against the Darwin Core text guide, 2023-09-13 (facts F17 to F21): nothing of ours reads it.
 */
class ExportCommandTest {
  private static final String TEXT = "http://rs.tdwg.org/dwc/text/";
  private static final String DWC = "http://rs.tdwg.org/dwc/terms/";

  @TempDir Path folder;
  private Path room = Path.of("");

  @BeforeEach
  void demoWithCalls() {
    room = Room.harrowmere(folder);
    try (Collection opened = Collection.open(room, Typed.CLOCK)) {
      opened.trays().record(Room.call("K-101", "Capreolus capreolus", Qualifier.NONE, "by eye"));
      opened.trays().record(Room.call("K-102", "Dama", Qualifier.SP, "by eye"));
      opened.trays().record(Room.call("K-102", "Dama dama", Qualifier.CF, "compared, \"H-7\""));
      opened.trays().record(Room.call("K-103", "=HYPERLINK(\"x\")", Qualifier.AFF, "@sum"));
      opened.trays().save(Room.tray("pit", "Pit lot", "Field 7, exact spot, simulated"));
      opened.trays().save(Room.bone("P-1", "pit", TrayBone.Standing.OPEN, "one,\ntwo"));
      opened.trays().save(Room.bone("P-2", "pit", TrayBone.Standing.STOPPED, ""));
      opened
          .trays()
          .save(
              Room.bone("P-3", "pit", TrayBone.Standing.OPEN, "see permit")
                  .withKeeping(new Keeping("", Keeping.Access.RESTRICTED)));
    }
  }

  private static List<List<String>> csv(String text) {
    List<List<String>> rows = new ArrayList<>();
    List<String> row = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (quoted) {
        if (c == '"' && i + 1 < text.length() && text.charAt(i + 1) == '"') {
          cell.append('"');
          i++;
        } else if (c == '"') {
          quoted = false;
        } else {
          cell.append(c);
        }
      } else if (c == '"') {
        quoted = true;
      } else if (c == ',' || c == '\n') {
        row.add(cell.toString());
        cell.setLength(0);
        if (c == '\n') {
          rows.add(row);
          row = new ArrayList<>();
        }
      } else {
        cell.append(c);
      }
    }
    assertEquals("", cell.toString(), "the last line ends");
    return rows;
  }

  /** One file of an archive as its meta.xml describes it: term → cell, a map a row. */
  private record Described(String rowType, List<Map<String, String>> rows) {
    static Described read(ZipFile zip, Element file, String key) throws IOException {
      assertEquals("UTF-8", file.getAttribute("encoding"));
      assertEquals(",", file.getAttribute("fieldsTerminatedBy"));
      assertEquals("\\n", file.getAttribute("linesTerminatedBy"));
      assertEquals("\"", file.getAttribute("fieldsEnclosedBy"));
      NodeList locations = file.getElementsByTagNameNS(TEXT, "location");
      assertEquals(1, locations.getLength());
      List<List<String>> lines = csv(text(zip, locations.item(0).getTextContent()));
      NodeList keys = file.getElementsByTagNameNS(TEXT, key);
      assertEquals(1, keys.getLength(), key);
      Map<Integer, String> terms = new HashMap<>();
      terms.put(Integer.valueOf(((Element) keys.item(0)).getAttribute("index")), key);
      NodeList fields = file.getElementsByTagNameNS(TEXT, "field");
      for (int i = 0; i < fields.getLength(); i++) {
        Element field = (Element) fields.item(i);
        URI term = URI.create(field.getAttribute("term"));
        assertTrue(term.isAbsolute(), field.getAttribute("term"));
        assertEquals(
            null, terms.put(Integer.valueOf(field.getAttribute("index")), term.toString()));
      }
      List<Map<String, String>> rows = new ArrayList<>();
      int headerLines = Integer.parseInt(file.getAttribute("ignoreHeaderLines"));
      for (List<String> line : lines.subList(headerLines, lines.size())) {
        assertEquals(terms.size(), line.size());
        Map<String, String> row = new HashMap<>();
        terms.forEach((index, term) -> row.put(term, line.get(index)));
        rows.add(row);
      }
      return new Described(file.getAttribute("rowType"), rows);
    }

    private static String text(ZipFile zip, String name) throws IOException {
      ZipEntry entry = zip.getEntry(name);
      return new String(zip.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static Document xml(ZipFile zip, String name) {
    try {
      DocumentBuilderFactory parsers = DocumentBuilderFactory.newInstance();
      parsers.setNamespaceAware(true);
      return parsers
          .newDocumentBuilder()
          .parse(
              new ByteArrayInputStream(Described.text(zip, name).getBytes(StandardCharsets.UTF_8)));
    } catch (Exception problem) {
      throw new AssertionError(name, problem);
    }
  }

  private Typed archive(Path out, String... more) {
    List<String> words =
        new ArrayList<>(List.of("export", "dwca", out.toString(), "--collection", room.toString()));
    words.addAll(List.of(more));
    return Typed.command(words.toArray());
  }

  private static Map<String, String> bone(Described core, String number) {
    return core.rows().stream()
        .filter(row -> number.equals(row.get("id")))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void archiveKeepsTheRulesOfTheTextGuide() throws IOException {
    Path out = folder.resolve("out.zip");
    Typed typed = archive(out);
    assertEquals(0, typed.code(), typed.err());
    try (ZipFile zip = new ZipFile(out.toFile())) {
      Element meta = xml(zip, "meta.xml").getDocumentElement();
      assertEquals(TEXT, meta.getNamespaceURI());
      assertEquals("archive", meta.getLocalName());
      assertTrue(zip.getEntry(meta.getAttribute("metadata")) != null);
      assertEquals(1, meta.getElementsByTagNameNS(TEXT, "core").getLength());
      Described core =
          Described.read(zip, (Element) meta.getElementsByTagNameNS(TEXT, "core").item(0), "id");
      NodeList extensions = meta.getElementsByTagNameNS(TEXT, "extension");
      Described calls = Described.read(zip, (Element) extensions.item(0), "coreid");
      Described facts = Described.read(zip, (Element) extensions.item(1), "coreid");
      assertEquals(DWC + "Occurrence", core.rowType());
      assertEquals(DWC + "Identification", calls.rowType());
      assertEquals("http://rs.iobis.org/obis/terms/ExtendedMeasurementOrFact", facts.rowType());
      // demo-data: 12 + 11 + 9 + 6 bones on the trays, and P-1; three calls on two, one on K-101.
      assertEquals(39, core.rows().size());
      assertEquals(4, calls.rows().size());
      Set<String> ids = new HashSet<>();
      core.rows().forEach(row -> assertTrue(ids.add(row.get("id"))));
      calls.rows().forEach(row -> assertTrue(ids.contains(row.get("coreid"))));
      facts.rows().forEach(row -> assertTrue(ids.contains(row.get("coreid"))));
      // tray-easy.csv, row of K-101: GL 160.5, GLC 150.0, SD 13.4, Bd 28.7, BT 25.6, HTC 11.9.
      assertEquals(
          List.of("160.5", "150.0", "13.4", "28.7", "25.6", "11.9").stream().sorted().toList(),
          facts.rows().stream()
              .filter(row -> row.get("coreid").equals("K-101"))
              .filter(row -> row.get(DWC + "measurementUnit").equals("mm"))
              .map(row -> row.get(DWC + "measurementValue"))
              .sorted()
              .toList());
      namesAreBare(core, calls);
      elementSideAndPortionAreSaidTwice(core, facts);
      assertTrue(xml(zip, "eml.xml").getDocumentElement().getTextContent().contains("(simulated)"));
    }
  }

  private static void namesAreBare(Described core, Described calls) {
    Map<String, String> fallow = bone(core, "K-102");
    assertEquals("Dama dama", fallow.get(DWC + "scientificName"));
    assertEquals("cf.", fallow.get(DWC + "identificationQualifier"));
    assertEquals(
        List.of("Dama", "Dama dama"),
        calls.rows().stream()
            .filter(row -> row.get("coreid").equals("K-102"))
            .map(row -> row.get(DWC + "scientificName"))
            .toList());
    Map<String, String> formula = bone(core, "K-103");
    assertEquals("'=HYPERLINK(\"x\")", formula.get(DWC + "scientificName"));
    Map<String, String> uncalled = bone(core, "K-104");
    assertEquals("", uncalled.get(DWC + "scientificName"));
    assertEquals("no call yet", uncalled.get(DWC + "identificationRemarks"));
  }

  private static void elementSideAndPortionAreSaidTwice(Described core, Described facts) {
    assertEquals(
        "element: humerus; side: left; portion: distal; remarks: one,\ntwo",
        bone(core, "P-1").get(DWC + "occurrenceRemarks"));
    Map<String, String> said = new HashMap<>();
    facts.rows().stream()
        .filter(row -> row.get("coreid").equals("P-1"))
        .forEach(
            row -> said.put(row.get(DWC + "measurementType"), row.get(DWC + "measurementValue")));
    assertEquals(Map.of("element", "humerus", "side", "left", "portion", "distal"), said);
  }

  @Test
  void placesRestrictedAndPossiblyHumanBonesStayInTheHouse() throws IOException {
    Path out = folder.resolve("out.zip");
    Typed typed = archive(out);
    assertTrue(
        typed
            .out()
            .contains(
                "held back: the exact place of 39 bones, 1 restricted bones, 1 bones set aside as"
                    + " possibly human"),
        typed.out());
    try (ZipFile zip = new ZipFile(out.toFile())) {
      Element meta = xml(zip, "meta.xml").getDocumentElement();
      Described core =
          Described.read(zip, (Element) meta.getElementsByTagNameNS(TEXT, "core").item(0), "id");
      assertEquals("", bone(core, "P-1").get(DWC + "locality"));
      assertEquals(
          "The recorded place is held back; ask the collection.",
          bone(core, "P-1").get(DWC + "informationWithheld"));
      assertFalse(Described.text(zip, "occurrence.csv").contains("Field 7"));
      assertFalse(Described.text(zip, "occurrence.csv").contains("P-2"));
      assertFalse(Described.text(zip, "measurement.csv").contains("P-3"));
    }
  }

  private void rights(String... words) {
    List<Object> all = new ArrayList<>(List.of("rights", "give"));
    all.addAll(List.of(words));
    all.addAll(List.of("--by", "demo", "--collection", room));
    assertEquals(0, Typed.command(all.toArray()).code());
  }

  @Test
  void placesGoOutOnlyOnTheWordOfAPersonWithThatRight() throws IOException {
    Path out = folder.resolve("out.zip");
    assertEquals(2, archive(out, "--places-opened-by", "nobody").code());
    Typed refused = archive(out, "--places-opened-by", "demo");
    assertEquals(2, refused.code());
    assertTrue(refused.err().contains("has not the right open_places"), refused.err());
    assertFalse(Files.exists(out));
    rights("demo", "keeper");
    rights("demo", "open_places");
    Typed opened = archive(out, "--places-opened-by", "demo");
    assertEquals(0, opened.code());
    assertTrue(opened.out().contains("exact places opened by demo"), opened.out());
    try (ZipFile zip = new ZipFile(out.toFile())) {
      assertTrue(Described.text(zip, "occurrence.csv").contains("Field 7"));
      assertTrue(
          xml(zip, "eml.xml")
              .getDocumentElement()
              .getTextContent()
              .contains("exact places opened by demo"));
    }
  }

  @Test
  void lotThatNeverOpensItsPlacesKeepsThemFromEveryone() throws IOException {
    rights("demo", "keeper");
    rights("demo", "open_places");
    rights("demo", "open_restricted");
    assertEquals(
        0,
        Typed.command("tray", "lot", "Pit lot", "never_out", "--by", "demo", "--collection", room)
            .code());
    Path out = folder.resolve("out.zip");
    Typed typed = archive(out, "--places-opened-by", "demo", "--restricted-opened-by", "demo");
    assertEquals(0, typed.code(), typed.err());
    assertTrue(typed.out().contains("the exact place of 2 bones, 1 bones set aside"), typed.out());
    try (ZipFile zip = new ZipFile(out.toFile())) {
      assertFalse(Described.text(zip, "occurrence.csv").contains("Field 7"));
      assertTrue(Described.text(zip, "occurrence.csv").contains("P-3"));
    }
  }

  @Test
  void tableForASpreadsheetHoldsNoFormula() throws IOException {
    Path out = folder.resolve("out.csv");
    Typed typed = Typed.command("export", "csv", out, "--collection", room);
    assertEquals(0, typed.code(), typed.err());
    List<List<String>> rows = csv(Files.readString(out));
    assertEquals(40, rows.size());
    for (List<String> row : rows) {
      for (String cell : row) {
        assertFalse(cell.startsWith("=") || cell.startsWith("@"), cell);
      }
    }
    assertTrue(typed.out().contains("39 rows; held back: the exact place of 39 bones"));
  }

  @Test
  void openCopyComesBackEqual() {
    Path copy = folder.resolve("out.jsonl");
    Path back = folder.resolve("back.comparanda");
    Typed held = Typed.command("export", "open-copy", copy, "--collection", room);
    assertEquals(2, held.code(), "one of the demo's animals may not be exported");
    assertEquals(
        0,
        Typed.command("export", "open-copy", copy, "--collection", room, "--stays-in-the-house")
            .code());
    Typed typed = Typed.command("restore", copy, "--into", back);
    assertEquals(0, typed.code(), typed.err());
    assertEqualCollections(back);
  }

  @Test
  void backupComesBackEqual() {
    Path copy = folder.resolve("monday.backup");
    Path back = folder.resolve("back.comparanda");
    Typed backup = Typed.command("backup", copy, "--collection", room);
    assertEquals(0, backup.code(), backup.err());
    assertEquals(2, Typed.command("backup", copy, "--collection", room).code());
    Typed typed = Typed.command("restore", copy, "--into", back);
    assertEquals(0, typed.code(), typed.err());
    assertEqualCollections(back);
  }

  private void assertEqualCollections(Path back) {
    try (Collection original = Collection.open(room, Typed.CLOCK);
        Collection restored = Collection.open(back, Typed.CLOCK)) {
      assertEquals(original.contentHash(), restored.contentHash());
      assertEquals(original.animals().shelf(), restored.animals().shelf());
      assertEquals(original.trays().all(), restored.trays().all());
    }
  }

  @Test
  void cutOpenCopyRestoresNothing() throws IOException {
    Path copy = folder.resolve("out.jsonl");
    Path back = folder.resolve("back.comparanda");
    Typed.command("export", "open-copy", copy, "--collection", room, "--stays-in-the-house");
    List<String> lines = Files.readAllLines(copy);
    Files.write(copy, lines.subList(0, lines.size() - 1));
    Typed cut = Typed.command("restore", copy, "--into", back);
    assertEquals(2, cut.code());
    assertTrue(cut.err().contains("the file was cut off"), cut.err());
    List<String> dropped = new ArrayList<>(lines);
    dropped.remove(9);
    Files.write(copy, dropped);
    assertEquals(2, Typed.command("restore", copy, "--into", back).code());
    List<String> changed = new ArrayList<>(lines);
    changed.replaceAll(line -> line.replace("\"Capreolus capreolus\"", "\"Dama dama\""));
    Files.write(copy, changed);
    assertEquals(2, Typed.command("restore", copy, "--into", back).code());
    assertFalse(Files.exists(back));
  }
}
