package org.comparanda.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipFile;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.comparanda.daybook.Verdict;
import org.comparanda.demo.DemoFiles;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.Length;
import org.comparanda.measurement.Person;
import org.comparanda.measurement.PersonId;
import org.comparanda.measurement.Reading;
import org.comparanda.storage.Collection;
import org.comparanda.tray.Call;
import org.comparanda.tray.Qualifier;
import org.comparanda.tray.TrayId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A whole lot by script: three trays, 120 simulated bones, from the heap to archive and slips. */
class TrayCommandTest {
  private static final String DWC = "measurement.csv";
  private static final String PLACE = "Harrowmere Bone Room: invented, all values simulated";

  @TempDir Path folder;
  private Path room = Path.of("");
  private final Map<String, String> takenFor = new HashMap<>();
  private final Map<String, String> typed = new HashMap<>();

  private void done(Object... words) {
    Typed done = Typed.command(words);
    assertEquals(0, done.code(), done.err());
  }

  /** Bones of the demo's simulated shelf, taken as finds: 40 a tray, numbered anew. */
  private List<Path> threeTables() throws IOException {
    List<Path> tables = new ArrayList<>();
    List<NamedCsvRecord> rows;
    try (var shelf = CsvReader.builder().ofNamedCsvRecord(DemoFiles.shipped("shelf.csv"))) {
      rows = shelf.stream().filter(r -> r.getField("flags").isEmpty()).limit(120).toList();
    }
    List<String> codes =
        rows.get(0).getHeader().stream()
            .filter(h -> h.endsWith("[mm]") && !h.startsWith("body"))
            .toList();
    for (int tray = 0; tray < 3; tray++) {
      StringBuilder csv = new StringBuilder("bone,element,side,portion," + String.join(",", codes));
      for (int i = 0; i < 40; i++) {
        NamedCsvRecord row = rows.get(tray * 40 + i);
        String number = "L-" + (tray + 1) + "%02d".formatted(i);
        takenFor.put(number, row.getField("taxon"));
        csv.append('\n').append(number);
        for (String column : List.of("element", "side", "portion")) {
          csv.append(',').append(row.getField(column));
        }
        for (String code : codes) {
          String value = row.getField(code);
          csv.append(',').append(value);
          if (!value.isEmpty()) {
            typed.put(number + " " + code.replace(" [mm]", ""), value);
          }
        }
      }
      tables.add(
          Files.writeString(folder.resolve("heap-" + (tray + 1) + ".csv"), csv.append('\n')));
    }
    return tables;
  }

  @Test
  void wholeLotGoesFromHeapToArchiveAndEveryNumberIsTraced() throws IOException {
    room = folder.resolve("room.comparanda");
    try (Collection made = Collection.create(room, Typed.CLOCK)) {
      made.people().save(new Person(new PersonId("p1"), "First Sorter (invented)"));
    }
    for (Path table : threeTables()) {
      String tray = String.valueOf(table.getFileName()).replace(".csv", "");
      done(
          "tray",
          "add",
          table,
          "--collection",
          room,
          "--tray",
          tray,
          "--lot",
          "The heap",
          "--place",
          PLACE,
          "--age",
          "archaeological",
          "--by",
          "p1");
      done("tray", "state", tray, "on_the_bench", "--collection", room);
    }
    takenFor.forEach(
        (bone, taxon) ->
            done(
                "tray",
                "call",
                bone,
                "cf. " + taxon,
                "--by",
                "p1",
                "--basis",
                "by measurement",
                "--how",
                "by_both",
                "--why",
                "the drawer of that taxon lay beside it",
                "--saw-suggestion",
                "--collection",
                room));
    for (String tray : List.of("heap-1", "heap-2", "heap-3")) {
      done("tray", "state", tray, "done", "--collection", room);
    }
    Typed list = Typed.command("tray", "list", "--collection", room);
    assertEquals(
        3, list.out().lines().filter(l -> l.endsWith("done; 40 bones, 40 called")).count());
    Path archive = folder.resolve("lot.zip");
    Path labels = folder.resolve("lot.pdf");
    done("export", "dwca", archive, "--collection", room, "--lot", "The heap");
    done("slips", "labels", labels, "--collection", room, "--lot", "The heap");
    try (PDDocument pages = Loader.loadPDF(labels.toFile())) {
      assertEquals(10, pages.getNumberOfPages()); // 12 a page
    }
    everyNumberIsTraced(archive);
  }

  private void everyNumberIsTraced(Path archive) throws IOException {
    try (ZipFile zip = new ZipFile(archive.toFile());
        Collection opened = Collection.open(room, Typed.CLOCK)) {
      int traced = 0;
      List<NamedCsvRecord> facts = records(zip, DWC);
      for (NamedCsvRecord fact : facts) {
        if (!fact.getField("measurementUnit").equals("mm")) {
          continue;
        }
        String bone = fact.getField("coreid");
        Reading reading =
            opened.readings().of(new BoneId(bone)).stream()
                .filter(r -> fact.getField("measurementID").equals("reading-" + r.id()))
                .findFirst()
                .orElseThrow();
        String value = fact.getField("measurementValue");
        assertEquals(value, String.valueOf(reading.length().map(Length::mm).orElseThrow()));
        assertEquals(
            Double.valueOf(typed.get(bone + " " + reading.code().value())), Double.valueOf(value));
        assertEquals(new PersonId("p1"), reading.person());
        assertEquals("First Sorter (invented)", fact.getField("measurementDeterminedBy"));
        traced++;
      }
      assertEquals(typed.size(), traced);
      for (NamedCsvRecord fact : facts) { // no other cell of a value is a number
        boolean number = fact.getField("measurementValue").matches("[0-9.]+");
        assertEquals(number, fact.getField("measurementUnit").equals("mm"), fact.toString());
      }
      everyCallIsTraced(records(zip, "identification.csv"), opened);
      assertEquals(120, records(zip, "occurrence.csv").size());
      for (NamedCsvRecord core : records(zip, "occurrence.csv")) {
        List<Call> calls = opened.trays().callsOn(new BoneId(core.getField("id")));
        assertEquals(1, calls.size());
        assertEquals(takenFor.get(core.getField("id")), core.getField("scientificName"));
        assertEquals("cf.", core.getField("identificationQualifier"));
        assertEquals("First Sorter (invented)", core.getField("identifiedBy"));
        assertEquals(Qualifier.CF, calls.get(0).qualifier());
      }
      assertTrue(opened.verifyDayBook(opened.dayBookHead()) instanceof Verdict.Sound);
    }
  }

  private void everyCallIsTraced(List<NamedCsvRecord> said, Collection opened) {
    assertEquals(120, said.size());
    for (NamedCsvRecord row : said) {
      Call call =
          opened.trays().callsOn(new BoneId(row.getField("coreid"))).stream()
              .filter(c -> row.getField("identificationID").equals("call-" + c.id()))
              .findFirst()
              .orElseThrow();
      assertEquals(new PersonId("p1"), call.person());
      assertEquals("First Sorter (invented)", row.getField("identifiedBy"));
      assertEquals(call.at().toString(), row.getField("dateIdentified"));
      assertEquals("cf. " + row.getField("scientificName"), row.getField("verbatimIdentification"));
    }
  }

  private static List<NamedCsvRecord> records(ZipFile zip, String name) throws IOException {
    String text =
        new String(zip.getInputStream(zip.getEntry(name)).readAllBytes(), StandardCharsets.UTF_8);
    try (var csv = CsvReader.builder().ofNamedCsvRecord(text)) {
      return csv.stream().toList();
    }
  }

  @Test
  void numberThatIsThereAlreadyStoresNothing() throws IOException {
    room = Room.harrowmere(folder);
    Path table =
        Files.writeString(
            folder.resolve("two.csv"),
            "bone,element,side,Bd [mm]\nN-1,humerus,left,30\nK-101,humerus,left,30\n");
    Typed typed =
        Typed.command("tray", "add", table, "--collection", room, "--tray", "new", "--by", "demo");
    assertEquals(2, typed.code());
    assertTrue(typed.err().contains("\"K-101\""), typed.err());
    try (Collection opened = Collection.open(room, Typed.CLOCK)) {
      assertTrue(opened.trays().bone(new BoneId("N-1")).isEmpty());
    }
  }

  @Test
  void bonesNeedNoMeasurement() throws IOException {
    room = Room.harrowmere(folder);
    Path table =
        Files.writeString(
            folder.resolve("heap.csv"), "bone,element,side\nN-1,atlas,axial\nN-2,rib,left\n");
    done("tray", "add", table, "--collection", room, "--tray", "new", "--by", "demo");
    try (Collection opened = Collection.open(room, Typed.CLOCK)) {
      assertEquals(2, opened.trays().bonesOf(new TrayId("new")).size());
      assertEquals(List.of(), opened.readings().of(new BoneId("N-1")));
    }
  }

  @Test
  void callThatIsNoNameIsRefused() {
    room = Room.harrowmere(folder);
    for (String name : List.of("cf.", "cf. Ovis aff. aries")) {
      Typed typed =
          Typed.command(
              "tray",
              "call",
              "K-101",
              name,
              "--by",
              "demo",
              "--basis",
              "by eye",
              "--collection",
              room);
      assertEquals(2, typed.code());
      assertTrue(typed.err().contains("Nothing was recorded"), typed.err());
    }
  }
}
