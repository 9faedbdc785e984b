package org.comparanda.gui.sizedesk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.comparanda.gui.control.plot.KindLook;
import org.comparanda.gui.control.plot.Lettering;
import org.comparanda.gui.control.plot.Series;
import org.comparanda.gui.control.plot.Xy;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.LinePoint;
import org.comparanda.taxon.TaxonName;

/** The animals of a picture by taxon, each taxon with its own colour and shape. */
final class KindSeries {
  private final Sheet sheet;
  private final FittedLine line;

  /** Taxa that are not of this line are marked as left out. */
  KindSeries(Sheet sheet, FittedLine line) {
    this.sheet = sheet;
    this.line = line;
  }

  List<Series> of(Iterable<LinePoint> points, Function<LinePoint, Xy> place) {
    Map<String, List<LinePoint>> byTaxon = new TreeMap<>();
    points.forEach(p -> byTaxon.computeIfAbsent(Sheet.taxon(p), t -> new ArrayList<>()).add(p));
    return byTaxon.entrySet().stream().map(e -> kind(e.getKey(), e.getValue(), place)).toList();
  }

  private Series kind(String taxon, List<LinePoint> points, Function<LinePoint, Xy> place) {
    int rank = sheet.taxa().stream().map(TaxonName::value).toList().indexOf(taxon);
    KindLook look = KindLook.of(Math.max(0, rank));
    boolean inLine = line.taxa().stream().anyMatch(t -> t.value().equals(taxon)) || taxon.isEmpty();
    return new Series(
        sheet.words().get(inLine ? "kind.in" : "kind.out", taxon, points.size()),
        Lettering.Face.ITALIC,
        look.mark(),
        look.light(),
        look.dark(),
        points.stream()
            .map(p -> new Series.Point(Sheet.animal(p), sheet.tip(p), place.apply(p)))
            .toList());
  }
}
