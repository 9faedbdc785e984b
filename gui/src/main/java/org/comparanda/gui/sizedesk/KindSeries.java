package org.comparanda.gui.sizedesk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.comparanda.gui.control.plot.KindLook;
import org.comparanda.gui.control.plot.Lettering;
import org.comparanda.gui.control.plot.Series;
import org.comparanda.gui.control.plot.Xy;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.LinePoint;
import org.comparanda.taxon.TaxonName;

/** The animals of a picture by taxon, each taxon with its own colour and shape. */
final class KindSeries {
  private static final int MOST_NAMED = 12;

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
    Set<String> named =
        byTaxon.entrySet().stream()
            .sorted(Comparator.comparingInt(e -> -e.getValue().size()))
            .limit(MOST_NAMED)
            .map(Map.Entry::getKey)
            .collect(Collectors.toSet());
    List<Series> all = new ArrayList<>();
    byTaxon.forEach(
        (taxon, of) ->
            all.add(kind(taxon, named.contains(taxon) ? name(taxon, of.size()) : "", of, place)));
    if (byTaxon.size() > named.size()) {
      all.add(more(byTaxon.size() - named.size()));
    }
    return all;
  }

  /** A longer list than the legend has room for: the others say their names under the pointer. */
  private Series more(int taxa) {
    KindLook look = KindLook.of(0);
    return new Series(
        sheet.words().get("kinds.more", taxa),
        Lettering.Face.PLAIN,
        look.mark(),
        look.light(),
        look.dark(),
        List.of());
  }

  private String name(String taxon, int animals) {
    boolean inLine = line.taxa().stream().anyMatch(t -> t.value().equals(taxon)) || taxon.isEmpty();
    return sheet.words().get(inLine ? "kind.in" : "kind.out", taxon, animals);
  }

  private Series kind(
      String taxon, String name, List<LinePoint> points, Function<LinePoint, Xy> place) {
    int rank = sheet.taxa().stream().map(TaxonName::value).toList().indexOf(taxon);
    KindLook look = KindLook.of(Math.max(0, rank));
    return new Series(
        name,
        Lettering.Face.ITALIC,
        look.mark(),
        look.light(),
        look.dark(),
        points.stream()
            .map(p -> new Series.Point(Sheet.animal(p), sheet.tip(p), place.apply(p)))
            .toList());
  }
}
