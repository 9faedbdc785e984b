package org.comparanda.gui.sizedesk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.gui.control.plot.AxisScale;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.Shelf;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.LinePoint;
import org.comparanda.sizeestimate.MethodsParagraph;
import org.comparanda.sizeestimate.SizeDesk;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;

/** One snapshot of the shelf and everything that the desk can say about it. Immutable. */
final class SizeStudy {
  private final Room room;
  private final Shelf shelf;
  private final TaxonTree tree;
  private final List<Quantity> quantities;

  SizeStudy(Room room, Shelf shelf) {
    this.room = room;
    this.shelf = shelf;
    this.tree = room.tree();
    this.quantities = Quantities.of(shelf, room.protocol(), room.words());
  }

  Shelf shelf() {
    return shelf;
  }

  /** The taxa as they were named then. */
  TaxonTree tree() {
    return tree;
  }

  List<Quantity> quantities() {
    return quantities;
  }

  Quantity quantity(String key) {
    return quantities.stream()
        .filter(q -> q.key().equals(key))
        .findFirst()
        .orElseGet(() -> new Quantity(key, key, key, "", ""));
  }

  /** How many animals of each taxon have both values and may feed a line. */
  Map<TaxonName, Integer> measured(String predict, String from) {
    Map<TaxonName, Integer> counts = new HashMap<>();
    pair(predict, from)
        .ifPresent(
            line ->
                line.points().stream()
                    .flatMap(p -> p.taxon().stream())
                    .forEach(t -> counts.merge(t, 1, Integer::sum)));
    return counts;
  }

  /** That animal's own value of a measurement, as it stands in a line. */
  Optional<Double> valueOf(AnimalId animal, String predict, String from) {
    return pair(predict, from).stream()
        .flatMap(line -> line.points().stream())
        .filter(p -> p.animals().contains(animal))
        .map((LinePoint p) -> p.x().get(0))
        .findFirst();
  }

  private Optional<FittedLine> pair(String predict, String from) {
    if (predict.equals(from)) {
      return Optional.empty();
    }
    return SizeDesk.of(shelf, room.protocol())
        .line(SizeAsk.of(predict, from, Set.of()).question(Set.of()))
        .value();
  }

  /** The question that a fresh desk starts with: the body from the best measured bone. */
  Optional<SizeAsk> first() {
    Optional<Quantity> wanted = quantities.stream().findFirst();
    return wanted.flatMap(
        w ->
            quantities.stream()
                .filter(q -> !q.ofBody())
                .max(
                    java.util.Comparator.comparingInt(
                        q -> measured(w.key(), q.key()).values().stream().mapToInt(n -> n).sum()))
                .map(
                    from ->
                        SizeAsk.of(w.key(), from.key(), measured(w.key(), from.key()).keySet())));
  }

  SizeShown show(SizeAsk ask, AxisScale axes) {
    SizeFinding finding = SizeFinding.of(shelf, room.protocol(), ask);
    return finding
        .line()
        .fold(
            line -> show(finding, line, axes),
            none -> SizeShown.none(AnswerText.none(none, room.words())));
  }

  private SizeShown show(SizeFinding finding, FittedLine line, AxisScale axes) {
    SizeAsk ask = finding.ask();
    List<Quantity> predictors = new ArrayList<>();
    line.question().from().forEach(key -> predictors.add(quantity(key)));
    ask.allFrom().stream()
        .map(this::quantity)
        .filter(q -> !predictors.contains(q))
        .forEach(predictors::add);
    LineNames names =
        new LineNames(tree, measured(ask.predict(), ask.from()).keySet(), room.words());
    Sheet sheet =
        Sheet.of(
            predictors,
            quantity(ask.predict()),
            line,
            axes,
            shelf,
            names,
            room.words(),
            room.locale(),
            room.note());
    LineNumbers numbers = new LineNumbers(room.words(), room.locale(), this::quantity);
    List<NumberRow> rows = new ArrayList<>(numbers.of(names.of(line), line));
    finding.beside().ifPresent(second -> rows.addAll(numbers.of(names.of(second), second)));
    return new SizeShown(
        AnswerText.of(sheet, finding, line),
        Optional.of(
            predictorsOf(line) == 1
                ? new LineFigure(sheet, finding).of(line)
                : new FitFigure(sheet, finding).of(line)),
        DiagnosticFigures.of(sheet, line),
        rows,
        methods(line),
        LineTable.csv(line),
        Optional.of(line));
  }

  private static int predictorsOf(FittedLine line) {
    return line.question().from().size();
  }

  /** The paragraph for a paper, in English, with the note on invented animals. */
  private String methods(FittedLine line) {
    String text = room.words().said(MethodsParagraph.of(line, this::named, room.version()));
    return room.note().isEmpty() ? text : text + " " + room.note();
  }

  private String named(String key) {
    Quantity quantity = quantity(key);
    return quantity.unit().isEmpty()
        ? quantity.name()
        : room.words().get("methods.unit", quantity.name(), quantity.unit());
  }
}
