package org.comparanda.demo;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/** The shelf as cells that can be spoilt, one animal for one fault. */
final class FaultySheet {
  private final List<String> header;
  private final List<Row> rows = new ArrayList<>();
  private final Set<String> spoilt = new HashSet<>();
  private final Draws draws;

  FaultySheet(List<NamedCsvRecord> shelf, Draws draws) {
    this.header = new ArrayList<>(shelf.get(0).getHeader());
    this.draws = draws;
    shelf.forEach(record -> rows.add(new Row(record.getFieldsAsMap())));
  }

  /** One bone; cells by header. */
  static final class Row {
    private final Map<String, String> cells;

    private Row(Map<String, String> cells) {
      this.cells = new LinkedHashMap<>(cells);
    }

    String get(String column) {
      return cells.getOrDefault(column, "");
    }

    void set(String column, String text) {
      cells.put(column, text);
    }

    boolean has(String column) {
      return !get(column).isEmpty();
    }

    double number(String column) {
      return Double.parseDouble(get(column));
    }

    /** Element and side. */
    String bone() {
      return get("element") + " " + get("side");
    }
  }

  Draws draws() {
    return draws;
  }

  /** A column beside the others, empty so far. */
  void addColumn(String name) {
    header.add(name);
  }

  /** A bone drawn from those of untouched animals that suit; its animal then counts as spoilt. */
  Row draw(Predicate<Row> suits) {
    List<Row> free =
        rows.stream().filter(this::untouched).filter(r -> !r.has("flags")).filter(suits).toList();
    if (free.isEmpty()) {
      throw new IllegalStateException("No untouched bone of the shelf suits this fault.");
    }
    Row row = free.get(draws.below(free.size()));
    spoilt.add(row.get("animal"));
    return row;
  }

  /** Whether nothing was planted into the animal of this bone. */
  boolean untouched(Row row) {
    return !spoilt.contains(row.get("animal"));
  }

  /** Every bone of that animal. */
  List<Row> ofAnimal(String animal) {
    return rows.stream().filter(r -> r.get("animal").equals(animal)).toList();
  }

  List<Row> all() {
    return List.copyOf(rows);
  }

  /** The measurements of a bone that has a reading there. */
  static List<String> readings(Row row) {
    return DemoShelf.MEASUREMENTS.stream().map(c -> c + " [mm]").filter(row::has).toList();
  }

  String csv() {
    return DemoTable.write(
        header, rows.stream().map(r -> header.stream().map(r::get).toList()).toList());
  }
}
