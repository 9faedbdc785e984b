package org.comparanda.gui.sizedesk;

import java.util.List;
import java.util.Locale;
import org.comparanda.gui.control.plot.AxisScale;
import org.comparanda.gui.text.Words;
import org.comparanda.reference.Shelf;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.LinePoint;
import org.comparanda.taxon.TaxonName;

/**
 * What every picture and text of one finding shares.
 *
 * @param from the measurement at hand
 * @param predict the quantity wanted
 * @param across unit of {@code from} as shown
 * @param up unit of {@code predict} as shown
 * @param axes plain or logarithmic, both axes alike
 * @param taxa all taxa of the shelf; a taxon's colour and shape are its place here
 * @param names what lines are called
 * @param note small print of every picture, may be empty
 */
record Sheet(
    Quantity from,
    Quantity predict,
    ShownUnit across,
    ShownUnit up,
    AxisScale axes,
    List<TaxonName> taxa,
    LineNames names,
    Words words,
    Locale locale,
    String note) {
  Sheet {
    taxa = List.copyOf(taxa);
  }

  static Sheet of(
      Quantity from,
      Quantity predict,
      FittedLine line,
      AxisScale axes,
      Shelf shelf,
      LineNames names,
      Words words,
      Locale locale,
      String note) {
    double largestX = line.points().stream().mapToDouble(p -> p.x().get(0)).max().orElse(1);
    double largestY = line.points().stream().mapToDouble(LinePoint::y).max().orElse(1);
    return new Sheet(
        from,
        predict,
        ShownUnit.of(from.unit(), largestX),
        ShownUnit.of(predict.unit(), largestY),
        axes,
        shelf.taxa(),
        names,
        words,
        locale,
        note);
  }

  /** Who a point is, for the pointer: number, taxon, drawer, both values. */
  String tip(LinePoint point) {
    String who = words.get("tip.who", point.label(), taxon(point));
    String where =
        point.drawer().map(d -> words.get("tip.drawer", d)).orElse(words.get("tip.elsewhere"));
    String values =
        words.get(
            "tip.values",
            from.name(),
            across.measured(point.x().get(0), locale),
            predict.name(),
            up.measured(point.y(), locale));
    return who + "\n" + where + "\n" + values;
  }

  static String taxon(LinePoint point) {
    return point.taxon().map(TaxonName::value).orElse("");
  }
}
