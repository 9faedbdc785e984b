package org.comparanda.sizeestimate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.BoneInHand;
import org.comparanda.reference.Shelf;
import org.comparanda.statistics.Outcome;
import org.comparanda.taxon.TaxonName;

/** The Size Desk: fits size lines on one snapshot of the shelf. */
public final class SizeDesk {
  private final Shelf shelf;
  private final Protocol protocol;
  private final ShelfQuantities quantities;
  private final LineRows.CaptiveMass captiveMass;

  private SizeDesk(Shelf shelf, Protocol protocol, LineRows.CaptiveMass captiveMass) {
    this.shelf = shelf;
    this.protocol = protocol;
    this.quantities = new ShelfQuantities(shelf, protocol);
    this.captiveMass = captiveMass;
  }

  /** A desk over this shelf; masses of captive animals are left out. */
  public static SizeDesk of(Shelf shelf, Protocol protocol) {
    return new SizeDesk(shelf, protocol, LineRows.CaptiveMass.LEFT_OUT);
  }

  /** The same desk, masses of captive animals used. */
  public SizeDesk withCaptiveMass() {
    return new SizeDesk(shelf, protocol, LineRows.CaptiveMass.USED);
  }

  /** The same desk without one animal. */
  public SizeDesk without(AnimalId animal) {
    return new SizeDesk(shelf.without(animal), protocol, captiveMass);
  }

  /** The line asked for, or why there is none. A line on a tree needs the tree. */
  public Outcome<FittedLine> line(SizeQuestion question) {
    return fit(question, Optional.empty());
  }

  /** The line asked for, on this tree where the question asks for one. */
  public Outcome<FittedLine> line(SizeQuestion question, LineTree tree) {
    return fit(question, Optional.of(tree));
  }

  /** The same desk with only these animals. */
  SizeDesk only(Set<AnimalId> animals) {
    return new SizeDesk(shelf.only(animal -> animals.contains(animal.id())), protocol, captiveMass);
  }

  /**
   * The size of a bone whose taxon is not decided: one line per candidate, and their mixture.
   *
   * @param question what is asked; its taxa are replaced by each candidate
   * @param bone the bone; its own animal is left out of every line
   * @param shares chance of each candidate, rescaled to 1
   */
  public UndecidedTaxon undecided(
      SizeQuestion question, BoneInHand bone, Map<TaxonName, Double> shares) {
    Map<TaxonName, Outcome<SizeEstimate>> byTaxon = new HashMap<>();
    for (TaxonName taxon : shares.keySet()) {
      byTaxon.put(taxon, line(question.withTaxa(Set.of(taxon))).then(line -> line.estimate(bone)));
    }
    return UndecidedTaxon.of(byTaxon, shares, question.scale(), question.level());
  }

  /** The best line from several measurements of one animal, and what the further ones gain. */
  public Outcome<SeveralBones> severalBones(SizeQuestion question) {
    return SeveralBones.of(this, question);
  }

  /** Tells bones that can hardly be one animal; by lines over these taxa, or all. */
  public OneAnimal oneAnimal(Set<TaxonName> taxa) {
    return new OneAnimal(this, shelf.animals(), taxa);
  }

  /** How a published equation does on the shelf's animals of these taxa, or of all. */
  public Outcome<EquationOnShelf> compare(PublishedEquation equation, Set<TaxonName> taxa) {
    return EquationOnShelf.of(this, equation, taxa);
  }

  /** The animals that a line would stand on. */
  Outcome<LineRows> points(SizeQuestion question) {
    return quantities
        .named(question.predict())
        .then(
            y ->
                predictors(question)
                    .then(x -> LineRows.of(shelf, quantities, y, x, question, captiveMass)));
  }

  private Outcome<FittedLine> fit(SizeQuestion question, Optional<LineTree> tree) {
    Outcome<Quantity> predict = quantities.named(question.predict());
    return predict.then(y -> predictors(question).then(x -> fit(question, tree, y, x)));
  }

  private Outcome<FittedLine> fit(
      SizeQuestion question, Optional<LineTree> tree, Quantity predict, List<Quantity> from) {
    if (from.stream().anyMatch(q -> q.sameAs(predict))) {
      return Outcome.none(
          "\"" + question.predict() + "\" is asked from itself.", "Choose another predictor.");
    }
    return LineRows.of(shelf, quantities, predict, from, question, captiveMass)
        .then(
            rows ->
                LineModels.fit(question, rows, tree)
                    .then(
                        fitted ->
                            Outcome.of(
                                new FittedLine(
                                    question,
                                    predict,
                                    from,
                                    fitted.rows(),
                                    fitted.model(),
                                    Correction.NAIVE,
                                    new WithoutOne(
                                        shelf::number, id -> without(id).fit(question, tree))))));
  }

  private Outcome<List<Quantity>> predictors(SizeQuestion question) {
    List<Quantity> found = new ArrayList<>();
    for (String name : question.from()) {
      Outcome<Quantity> quantity = quantities.named(name);
      if (quantity.value().isEmpty()) {
        return quantity.then(q -> Outcome.of(List.of()));
      }
      found.add(quantity.value().orElseThrow());
    }
    return Outcome.of(found);
  }
}
