package org.comparanda.gui.sizedesk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;
import org.comparanda.reference.Shelf;
import org.comparanda.sizeestimate.EquationAnswer;
import org.comparanda.sizeestimate.EquationOnShelf;
import org.comparanda.sizeestimate.HonestDigits;
import org.comparanda.sizeestimate.PublishedEquation;
import org.comparanda.sizeestimate.SizeDesk;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.PredictionInterval;
import org.comparanda.taxon.TaxonName;

/** Puts a published equation into words. */
final class EquationText {
  private final Room room;
  private final Words words;
  private final Numbers numbers;

  EquationText(Room room) {
    this.room = room;
    this.words = room.words();
    this.numbers = new Numbers(room.locale());
  }

  /**
   * The equation with its value and its error on the shelf.
   *
   * @param mm the measurement, mm
   * @param ticked taxa that feed the line at the left
   */
  EquationShown of(
      PublishedEquation equation,
      Outcome<Optional<Double>> mm,
      double level,
      Shelf shelf,
      Set<TaxonName> ticked) {
    Optional<EquationAnswer> answer =
        mm.value().flatMap(v -> v).flatMap(v -> EquationAnswer.of(equation, v, level).value());
    List<String> cautions = new ArrayList<>();
    answer.ifPresent(a -> outside(equation, mm).ifPresent(cautions::add));
    if (!equation.caution().isBlank()) {
      cautions.add(equation.caution());
    }
    if (!equation.verified()) {
      cautions.add(words.get("equation.memory"));
    }
    return new EquationShown(
        answer.map(this::value).orElseGet(() -> waiting(equation, mm)),
        cautions,
        facts(equation),
        onShelf(equation, shelf, ticked));
  }

  private String waiting(PublishedEquation equation, Outcome<Optional<Double>> mm) {
    return mm.fold(
        v -> words.get("equation.waiting", predictor(equation)),
        none -> words.said(none.reason() + " " + none.remedy()));
  }

  private String value(EquationAnswer answer) {
    String unit = answer.equation().resultUnit();
    String what = words.get("equation.predicts." + predicts(answer.equation()));
    return answer
        .prediction()
        .fold(
            p ->
                words.get(
                    "equation.value.interval",
                    what,
                    honest(p, answer.value()),
                    unit,
                    honest(p, p.lower()),
                    honest(p, p.upper()),
                    numbers.upTo(100 * p.level(), 1)),
            none -> words.get("equation.value", what, five(answer.value()), unit));
  }

  private static String predicts(PublishedEquation equation) {
    return switch (equation.predicts()) {
      case "withers_height", "total_length", "body_length", "body_mass" -> equation.predicts();
      default -> "other";
    };
  }

  private Optional<String> outside(PublishedEquation equation, Outcome<Optional<Double>> mm) {
    double inUnit = equation.predictor().unit().equals("cm") ? 10 : 1;
    return equation
        .valid()
        .filter(
            range ->
                mm.value()
                    .flatMap(v -> v)
                    .filter(v -> v / inUnit < range.low() || v / inUnit > range.high())
                    .isPresent())
        .map(range -> words.get("equation.outside", range(equation, range)));
  }

  private List<Fact> facts(PublishedEquation equation) {
    List<Fact> facts = new ArrayList<>();
    fact(facts, "formula", formula(equation));
    fact(facts, "from", equation.predictor().description());
    fact(facts, "for", equation.taxon() + ", " + equation.appliesTo());
    fact(
        facts,
        "range",
        equation.valid().map(r -> range(equation, r)).orElse(words.get("equation.notsaid")));
    fact(
        facts,
        "animals",
        equation.animals().isPresent()
            ? Integer.toString(equation.animals().getAsInt())
            : words.get("equation.notsaid"));
    fact(
        facts,
        "error",
        equation.standardError().isPresent()
            ? five(equation.standardError().getAsDouble())
            : words.get("equation.noerror"));
    fact(facts, "citation", equation.citation());
    fact(facts, "read", equation.howVerified());
    return facts;
  }

  private void fact(List<Fact> facts, String key, String text) {
    facts.add(new Fact(words.get("equation.fact." + key), text));
  }

  /** With its own log base and units. */
  private String formula(PublishedEquation equation) {
    String y = equation.predicts().replace('_', ' ') + " [" + equation.resultUnit() + "]";
    String x = equation.predictor().code() + " [" + equation.predictor().unit() + "]";
    if (equation.form() instanceof PublishedEquation.Factor f) {
      return y + " = " + five(f.factor()) + " · " + x;
    }
    if (equation.form() instanceof PublishedEquation.Line l) {
      return y + " = " + five(l.intercept()) + " + " + five(l.slope()) + " · " + x;
    }
    if (equation.form() instanceof PublishedEquation.Power p) {
      return y + " = " + five(p.constant()) + " · " + x + " ^ " + five(p.exponent());
    }
    PublishedEquation.LogLine logs = (PublishedEquation.LogLine) equation.form();
    String log = logs.base() == 10 ? "log10 " : "ln ";
    return log + y + " = " + five(logs.intercept()) + " + " + five(logs.slope()) + " · " + log + x;
  }

  private String range(PublishedEquation equation, PublishedEquation.ValidRange range) {
    return words.get(
        "equation.range", five(range.low()), five(range.high()), equation.predictor().unit());
  }

  String predictor(PublishedEquation equation) {
    return equation.predictor().element() + " " + equation.predictor().code();
  }

  private List<String> onShelf(PublishedEquation equation, Shelf shelf, Set<TaxonName> ticked) {
    Set<TaxonName> meant =
        shelf.taxa().stream()
            .filter(t -> room.tree().within(t, equation.taxon()))
            .collect(Collectors.toSet());
    SizeDesk desk = SizeDesk.of(shelf, room.protocol());
    List<String> said = new ArrayList<>();
    said.add(
        meant.isEmpty()
            ? words.get("equation.shelf.nobody", equation.taxon())
            : sentence("equation.shelf.meant", desk.compare(equation, meant)));
    if (!ticked.isEmpty() && !ticked.equals(meant)) {
      desk.compare(equation, ticked)
          .value()
          .ifPresent(e -> said.add(sentence("equation.shelf.ticked", Outcome.of(e))));
    }
    return said;
  }

  private String sentence(String key, Outcome<EquationOnShelf> onShelf) {
    return onShelf.fold(
        e ->
            words.get(
                key,
                e.animals(),
                numbers.fixed(e.error().medianAbsolute(), 1),
                words.get(e.error().mean() > 0 ? "equation.low" : "equation.high"),
                numbers.fixed(Math.abs(e.error().mean()), 1)),
        none -> words.get("equation.shelf.none", words.said(none.reason())));
  }

  private String honest(PredictionInterval p, double value) {
    return numbers.written(HonestDigits.of(p.lower(), p.upper()).text(value));
  }

  /** Five significant digits. */
  private String five(double value) {
    return numbers.written(
        new java.math.BigDecimal(value)
            .round(new java.math.MathContext(5))
            .stripTrailingZeros()
            .toPlainString());
  }
}
