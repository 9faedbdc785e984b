package org.comparanda.demo;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Protocol;

/** The simulated trays: each bone of {@code plan.csv} from an ordinary animal of its own. */
final class DemoTray {
  static final List<String> TRAYS = List.of("easy", "hard", "messy", "fossil");
  private static final List<String> HEADER =
      List.of("bone", "element", "side", "portion", "flags", "remarks");

  private final DemoParameters parameters;
  private final Protocol protocol;

  DemoTray(DemoParameters parameters, Protocol protocol) {
    this.parameters = parameters;
    this.protocol = protocol;
  }

  /** The text of one {@code tray-….csv}. */
  String csv(String tray, Draws draws) {
    List<List<String>> rows = new ArrayList<>();
    for (NamedCsvRecord plan : DemoTable.rows("plan.csv")) {
      if (plan.getField("tray").equals(tray)) {
        rows.add(row(plan, draws.split()));
      }
    }
    List<String> header = new ArrayList<>(HEADER);
    DemoShelf.MEASUREMENTS.forEach(code -> header.add(code + " [mm]"));
    return DemoTable.write(header, rows);
  }

  private List<String> row(NamedCsvRecord plan, Draws draws) {
    String element = plan.getField("element");
    SimulatedAnimal animal =
        SimulatedAnimal.ordinary(
            parameters, plan.getField("like"), Double.parseDouble(plan.getField("size")), draws);
    boolean crushed = plan.getField("flags").contains("crushed");
    List<String> row =
        new ArrayList<>(
            List.of(
                plan.getField("bone"),
                element,
                plan.getField("side"),
                plan.getField("portion"),
                plan.getField("flags"),
                plan.getField("remarks")));
    Set<String> possible = possible(element, plan.getField("portion"));
    for (String code : DemoShelf.MEASUREMENTS) {
      if (possible.contains(code) && animal.has(element, code)) {
        double value = animal.value(element, code, plan.getField("side"));
        double flattened = crushed && code.equals("SH") ? 0.55 * value : value;
        row.add(typed(code, flattened, plan.getField("slip")));
      } else {
        row.add("");
      }
    }
    return row;
  }

  /** The measurements that what is left of the bone allows. */
  private Set<String> possible(String element, String portion) {
    Portion part = Portion.valueOf(portion.toUpperCase(Locale.ROOT));
    return protocol.of(new ElementKey(element)).stream()
        .filter(m -> m.needs().contains(part))
        .map(m -> m.code())
        .map(MeasurementCode::value)
        .collect(Collectors.toUnmodifiableSet());
  }

  private static String typed(String code, double mm, String slip) {
    if (slip.equals("inch")) {
      return TypedNumber.thousandths(mm / 25.4);
    }
    String text = TypedNumber.tenths(mm);
    if (slip.equals("swap " + code)) {
      return Slips.firstDigitsSwapped(text);
    }
    return slip.equals("tenth " + code) ? TypedNumber.tenths(mm / 10) : text;
  }
}
