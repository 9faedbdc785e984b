package org.comparanda.exchange.shelf;

import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.comparanda.exchange.csv.HarmlessCsv;
import org.comparanda.exchange.table.TableReader;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.ShelfBone;
import org.comparanda.register.AnimalCard;

/**
 * Animals as a table of the form that {@code shelf add} reads: lengths in mm and masses in g to the
 * last digit, plain numbers in their own unit. What a table can't hold is said.
 */
public final class ShelfTable {
  private final Protocol protocol;
  private final List<AnimalCard> animals;
  private final Set<MeasurementCode> codes = new TreeSet<>();
  private final Set<String> notHeld = new LinkedHashSet<>();
  private long rows;

  public ShelfTable(Protocol protocol, List<AnimalCard> animals) {
    this.protocol = protocol;
    this.animals = List.copyOf(animals);
    for (AnimalCard card : animals) {
      for (ShelfBone bone : card.animal().bones()) {
        codes.addAll(bone.values().keySet());
      }
    }
    for (MeasurementCode code : List.copyOf(codes)) {
      if (!TableReader.headsColumn(code)) {
        codes.remove(code);
        notHeld.add("the measurement " + code + ", whose code is the name of a column");
      }
    }
  }

  /** How readings are laid out. */
  public enum Shape {
    /** A row for each bone, a column for each measurement. */
    WIDE,
    /** A row for each reading; a bone without one has a row, too. */
    LONG
  }

  /** As CSV. */
  public void csv(Shape shape, Writer writer) throws IOException {
    HarmlessCsv csv = new HarmlessCsv(writer);
    write(shape, csv::row);
  }

  /** As a workbook (.xlsx) of one sheet. */
  public void sheet(Shape shape, OutputStream bytes) throws IOException {
    for (AnimalCard card : animals) {
      for (String cell : AnimalCells.of(card, Optional.empty())) {
        if (!SheetFile.holds(cell)) {
          notHeld.add("a control character of " + card.id() + ", which is written as ?");
        }
      }
    }
    try (SheetFile sheet = new SheetFile(bytes)) {
      write(shape, sheet);
    }
  }

  private void write(Shape shape, TableRows rows) throws IOException {
    if (shape == Shape.LONG) {
      tall(rows);
    } else {
      wide(rows);
    }
  }

  private void wide(TableRows csv) throws IOException {
    List<String> header = AnimalCells.header();
    codes.forEach(code -> header.add(header(code)));
    csv.row(header);
    for (AnimalCard card : animals) {
      for (ShelfBone bone : card.animal().bones()) {
        List<String> cells = cells(card, Optional.of(bone));
        codes.forEach(code -> cells.add(value(bone, code)));
        row(csv, cells);
      }
      if (card.animal().bones().isEmpty()) {
        List<String> cells = cells(card, Optional.empty());
        codes.forEach(code -> cells.add(""));
        row(csv, cells);
      }
    }
  }

  private void tall(TableRows csv) throws IOException {
    List<String> header = AnimalCells.header();
    header.addAll(List.of("bone", "measurement", "value", "unit"));
    csv.row(header);
    for (AnimalCard card : animals) {
      Map<String, Integer> seen = new HashMap<>();
      for (ShelfBone bone : card.animal().bones()) {
        int number =
            seen.merge(bone.element() + "|" + bone.side() + "|" + bone.portion(), 1, Integer::sum);
        tall(csv, card, bone, number == 1 ? "" : String.valueOf(number));
      }
      if (card.animal().bones().isEmpty()) {
        row(csv, with(cells(card, Optional.empty()), List.of("", "", "", "")));
      }
    }
  }

  private void tall(TableRows csv, AnimalCard card, ShelfBone bone, String number)
      throws IOException {
    List<String> cells = cells(card, Optional.of(bone));
    boolean any = false;
    for (MeasurementCode code : codes) {
      if (bone.values().containsKey(code)) {
        any = true;
        row(
            csv,
            with(cells, List.of(number, code.value(), value(bone, code), inMm(code) ? "mm" : "")));
      }
    }
    if (!any) {
      row(csv, with(cells, List.of(number, "", "", "")));
    }
  }

  private static List<String> with(List<String> cells, Collection<String> more) {
    List<String> all = new ArrayList<>(cells);
    all.addAll(more);
    return all;
  }

  private void row(TableRows csv, List<String> cells) throws IOException {
    csv.row(cells);
    rows++;
  }

  private List<String> cells(AnimalCard card, Optional<ShelfBone> bone) {
    List<String> header = AnimalCells.header();
    List<String> cells = AnimalCells.of(card, bone);
    for (int i = 0; i < cells.size(); i++) {
      boolean ofTheCard = i >= header.indexOf("animal_source_name"); // a card has no blanks at ends
      if (!TableReader.comesBack(cells.get(i))
          || (ofTheCard && !cells.get(i).equals(cells.get(i).strip()))) {
        notHeld.add(
            header.get(i)
                + " of "
                + card.id()
                + " (\""
                + cells.get(i)
                + "\": blanks at the ends, or a word for missing)");
      }
    }
    return cells;
  }

  /** Whether the cells below a header are numbers: all but the words that the form reserves. */
  static boolean isOfNumbers(String header) {
    return header.equals("value")
        || header.endsWith("]")
        || TableReader.headsColumn(new MeasurementCode(header));
  }

  private String header(MeasurementCode code) {
    return inMm(code) ? code + " [mm]" : code.value();
  }

  private boolean inMm(MeasurementCode code) {
    return protocol.measurements().stream().anyMatch(m -> m.code().equals(code));
  }

  private static String value(ShelfBone bone, MeasurementCode code) {
    return Optional.ofNullable(bone.values().get(code)).map(String::valueOf).orElse("");
  }

  /** Rows written so far. */
  public long rows() {
    return rows;
  }

  /** What was written but won't come back as it was, each in words. */
  public List<String> notHeld() {
    return List.copyOf(notHeld);
  }
}
