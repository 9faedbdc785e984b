package org.comparanda.gui.sizedesk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.comparanda.gui.text.Numbers;
import org.comparanda.reference.Animal;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.LineMethod;
import org.comparanda.sizeestimate.OutsideRange;
import org.comparanda.sizeestimate.Reach;
import org.comparanda.sizeestimate.SizeEstimate;
import org.comparanda.sizeestimate.TreePlace;
import org.comparanda.taxon.TaxonName;

/** What a reader of an estimate must not miss, each a sentence. */
final class Cautions {
  private final Sheet sheet;
  private final SizeFinding finding;

  Cautions(Sheet sheet, SizeFinding finding) {
    this.sheet = sheet;
    this.finding = finding;
  }

  /** Of an estimate by this line: bones that can't be one animal first. */
  List<String> of(SizeEstimate estimate, FittedLine line) {
    List<String> said = new ArrayList<>();
    estimate.outsideRange().ifPresent(o -> said.add(outside(o)));
    if (estimate.reach() == Reach.SCALING_GUESS) {
      said.add(word("caution.guess"));
    }
    if (line.method() == LineMethod.INVERSE) {
      said.add(word("caution.inverse"));
    }
    if (line.method() == LineMethod.SMA || line.method() == LineMethod.MA) {
      said.add(word("caution.axis"));
    }
    Optional<TaxonName> taxon =
        finding.ask().choice().boneTaxon().or(() -> finding.own().flatMap(Animal::taxon));
    line.place(taxon).ifPresent(p -> said.add(onTree(p, taxon)));
    said.addAll(0, ofBones());
    return said;
  }

  /** Of the bones in hand, whatever line they are put on. */
  List<String> ofBones() {
    Numbers numbers = new Numbers(sheet.locale());
    return finding.disagree().stream()
        .map(
            d ->
                sheet
                    .words()
                    .get("caution.disagree", d.one(), d.other(), numbers.chance(d.chance())))
        .toList();
  }

  private String outside(OutsideRange o) {
    String key =
        "outside."
            + o.end().name().toLowerCase(Locale.ROOT)
            + "."
            + o.dimension().name().toLowerCase(Locale.ROOT);
    String percent =
        o.percent() < 1
            ? word("outside.little")
            : new Numbers(sheet.locale()).fixed(o.percent(), 0);
    return sheet.words().get(key, percent, sheet.noun(o.predictor()));
  }

  private String onTree(TreePlace place, Optional<TaxonName> taxon) {
    String name = taxon.map(TaxonName::value).orElse("");
    return switch (place) {
      case OWN_MEAN -> sheet.words().get("tree.mean", name);
      case EMPTY_TIP -> sheet.words().get("tree.empty", name);
      case ROOT -> name.isEmpty() ? word("tree.notaxon") : sheet.words().get("tree.root", name);
    };
  }

  /**
   * What is recorded of the bone's own animal, so that anyone can see how far off the answer is.
   */
  Optional<String> recorded() {
    Optional<Double> truth = finding.own().flatMap(a -> recorded(sheet.predict(), a));
    return finding
        .own()
        .map(
            a ->
                truth
                    .map(
                        t ->
                            sheet
                                .words()
                                .get(
                                    "answer.recorded",
                                    a.id().value(),
                                    sheet.predict().name(),
                                    sheet.up().measured(t, sheet.locale())))
                    .orElse(sheet.words().get("answer.own", a.id().value())));
  }

  private static Optional<Double> recorded(Quantity predict, Animal animal) {
    return switch (predict.key()) {
      case Quantities.BODY_LENGTH -> animal.bodyLengthMm();
      case Quantities.BODY_MASS -> animal.bodyMassG();
      default -> Optional.empty();
    };
  }

  private String word(String key) {
    return sheet.words().get(key);
  }
}
