package org.comparanda.demo;

import java.util.List;
import org.comparanda.bone.ElementKey;
import org.comparanda.demo.FaultySheet.Row;
import org.comparanda.demo.PlantedFaults.Fault;
import org.comparanda.measurement.PartRule;
import org.comparanda.measurement.Protocol;

/** Plants one fault at a time. */
final class FaultPlanter {
  private static final List<String> UNKNOWN = List.of("GX", "Bq", "LQ", "ZB", "KW");

  private final FaultySheet sheet;
  private final Protocol protocol;

  FaultPlanter(FaultySheet sheet, Protocol protocol) {
    this.sheet = sheet;
    this.protocol = protocol;
  }

  /** Plants the {@code nth} fault of a kind and says what was done. */
  Fault plant(FaultKind kind, double by, int nth) {
    return switch (kind) {
      case TIMES_TEN, TIMES_INCH -> scaled(kind, nth % 2 == 0 ? 1 / by : by);
      case DIGITS_SWAPPED -> swapped();
      case SIDES_APART -> sideApart(by);
      case OUTLIER -> outlier(by);
      case PART_LONGER -> partLonger(by);
      case TAXON_MISSPELT -> misspelt();
      case NUMBER_TWICE -> numberTwice();
      case TWO_TAXA -> twoTaxa();
      case YOUNG_AS_ADULT -> everyRow(kind, "age_class", "juvenile");
      case CAST_UNFLAGGED -> castUnflagged();
      case CODE_UNKNOWN -> codeUnknown(UNKNOWN.get(nth % UNKNOWN.size()) + " [mm]");
    };
  }

  private Fault scaled(FaultKind kind, double factor) {
    Row row = sheet.draw(r -> !FaultySheet.readings(r).isEmpty());
    String column = anyReading(row);
    double slipped = row.number(column) * factor;
    return change(
        kind,
        row,
        column,
        factor < 1 ? TypedNumber.thousandths(slipped) : TypedNumber.tenths(slipped));
  }

  private Fault swapped() {
    Row row = sheet.draw(r -> FaultySheet.readings(r).stream().anyMatch(c -> swaps(r.get(c))));
    String column =
        FaultySheet.readings(row).stream().filter(c -> swaps(row.get(c))).findFirst().orElseThrow();
    return change(FaultKind.DIGITS_SWAPPED, row, column, Slips.firstDigitsSwapped(row.get(column)));
  }

  private Fault sideApart(double by) {
    Row left = sheet.draw(r -> r.get("side").equals("left") && !shared(r).isEmpty());
    List<String> columns = shared(left);
    String column = columns.get(sheet.draws().below(columns.size()));
    return change(
        FaultKind.SIDES_APART, left, column, TypedNumber.tenths(other(left).number(column) * by));
  }

  private Fault outlier(double chance) {
    Row row = sheet.draw(r -> CalcaneusSpread.fits(sheet, r));
    CalcaneusSpread spread = CalcaneusSpread.around(sheet, row);
    double factor = spread.breadthAtChance(row, chance) / row.number(CalcaneusSpread.BREADTH);
    String was = row.get(CalcaneusSpread.BREADTH);
    sheet.ofAnimal(row.get("animal")).stream()
        .filter(r -> r.get("element").equals("calcaneus"))
        .filter(r -> r.has(CalcaneusSpread.BREADTH))
        .forEach(
            r ->
                r.set(
                    CalcaneusSpread.BREADTH,
                    TypedNumber.tenths(r.number(CalcaneusSpread.BREADTH) * factor)));
    return new Fault(
        FaultKind.OUTLIER,
        row.get("animal"),
        row.bone(),
        CalcaneusSpread.BREADTH,
        was,
        row.get(CalcaneusSpread.BREADTH));
  }

  private Fault partLonger(double by) {
    Row row = sheet.draw(r -> !rules(r).isEmpty());
    PartRule rule = rules(row).get(sheet.draws().below(rules(row).size()));
    return change(
        FaultKind.PART_LONGER,
        row,
        rule.part() + " [mm]",
        TypedNumber.tenths(row.number(rule.whole() + " [mm]") * by + 0.05));
  }

  private Fault misspelt() {
    Row row = sheet.draw(r -> true);
    String name = row.get("taxon");
    int epithet = name.indexOf(' ') + 1;
    int at = epithet + 1 + sheet.draws().below(name.length() - epithet - 1);
    char wrong = name.charAt(at) == 'e' ? 'i' : 'e';
    return everyRow(
        FaultKind.TAXON_MISSPELT,
        row,
        "taxon",
        name.substring(0, at) + wrong + name.substring(at + 1));
  }

  private Fault numberTwice() {
    Row row = sheet.draw(r -> r.get("side").equals("left"));
    Row other =
        sheet.draw(r -> r.get("taxon").equals(row.get("taxon")) && r.bone().equals(row.bone()));
    return everyRow(FaultKind.NUMBER_TWICE, other, "animal", row.get("animal"));
  }

  private Fault twoTaxa() {
    Row row = sheet.draw(r -> sheet.ofAnimal(r.get("animal")).size() > 1);
    List<String> others =
        sheet.all().stream()
            .filter(r -> r.get("element").equals(row.get("element")))
            .map(r -> r.get("taxon"))
            .filter(taxon -> !taxon.equals(row.get("taxon")))
            .distinct()
            .toList();
    return change(FaultKind.TWO_TAXA, row, "taxon", others.get(sheet.draws().below(others.size())));
  }

  private Fault castUnflagged() {
    Row row = sheet.draw(r -> true);
    return change(FaultKind.CAST_UNFLAGGED, row, "remarks", "simulated; plaster cast");
  }

  private Fault codeUnknown(String code) {
    sheet.addColumn(code);
    Row row = sheet.draw(r -> !FaultySheet.readings(r).isEmpty());
    String column = anyReading(row);
    String was = row.get(column);
    row.set(column, "");
    row.set(code, was);
    return new Fault(FaultKind.CODE_UNKNOWN, row.get("animal"), row.bone(), code, "", was);
  }

  private Fault everyRow(FaultKind kind, String column, String now) {
    return everyRow(kind, sheet.draw(r -> true), column, now);
  }

  private Fault everyRow(FaultKind kind, Row row, String column, String now) {
    String was = row.get(column);
    sheet.ofAnimal(row.get("animal")).forEach(r -> r.set(column, now));
    return new Fault(kind, row.get("animal"), "all", column, was, now);
  }

  private static Fault change(FaultKind kind, Row row, String column, String now) {
    String was = row.get(column);
    row.set(column, now);
    return new Fault(kind, row.get("animal"), row.bone(), column, was, now);
  }

  private String anyReading(Row row) {
    List<String> columns = FaultySheet.readings(row);
    return columns.get(sheet.draws().below(columns.size()));
  }

  private static boolean swaps(String number) {
    return !Slips.firstDigitsSwapped(number).equals(number);
  }

  /** The readings that a left bone shares with its right counterpart. */
  private List<String> shared(Row left) {
    return sheet.ofAnimal(left.get("animal")).stream()
        .filter(r -> isCounterpart(left, r))
        .flatMap(r -> FaultySheet.readings(left).stream().filter(r::has))
        .toList();
  }

  private Row other(Row left) {
    return sheet.ofAnimal(left.get("animal")).stream()
        .filter(r -> isCounterpart(left, r))
        .findFirst()
        .orElseThrow();
  }

  private static boolean isCounterpart(Row left, Row row) {
    return row.get("element").equals(left.get("element")) && row.get("side").equals("right");
  }

  private List<PartRule> rules(Row row) {
    return protocol.partRules(new ElementKey(row.get("element"))).stream()
        .filter(r -> row.has(r.part() + " [mm]") && row.has(r.whole() + " [mm]"))
        .toList();
  }
}
