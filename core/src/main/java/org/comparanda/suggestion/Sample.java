package org.comparanda.suggestion;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.AnimalId;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.discriminant.Conformal;
import org.comparanda.statistics.discriminant.GroupMoments;
import org.comparanda.statistics.discriminant.GroupedRows;
import org.comparanda.statistics.discriminant.RowsWithHoles;
import org.comparanda.statistics.discriminant.SidePairs;
import org.comparanda.statistics.discriminant.UnitMoments;
import org.comparanda.taxon.TaxonName;

/**
 * The animals of one element that have every measurement of a set, as rows of numbers. Groups are
 * the taxa of the element, units the animals, both numbered alike in every sample of the element.
 */
final class Sample {
  /** A unit that no animal of the shelf has. */
  static final int STRANGER = -1;

  private static final int FILLED_KEPT = 64;

  private final ElementRows element;
  private final List<MeasurementCode> set;
  private final Coordinates coordinates;
  private final List<TaxonName> taxa;
  private final GroupedRows rows;
  private final GroupedRows oneSideRows;
  private final UnitMoments moments;
  private final UnitMoments oneSideMoments;
  private final Once<MethodChoice> choice;
  private final Once<Conformal> conformal;
  private final Map<TaxonName, Set<Integer>> unitsByTaxon;
  private final ComparisonRules rules;
  private final Memo<Integer, Outcome<Filled>> filled;

  /** What a bone in hand is compared as. */
  enum Offer {
    /** The mean of an animal's sides, or a bone of the midline: judged with the plain spread. */
    ANIMAL,
    /** One of two sides: judged with half the spread between sides on top. */
    ONE_SIDE
  }

  private Sample(
      ElementRows element,
      List<MeasurementCode> set,
      ComparisonRules rules,
      GroupedRows rows,
      SidePairs pairs) {
    this.element = element;
    this.set = List.copyOf(set);
    this.coordinates = Coordinates.on(rules.scale(), set.size());
    this.taxa = element.taxa();
    this.rules = rules;
    this.filled = new Memo<>(FILLED_KEPT, this::filledAfresh);
    this.rows = rows;
    this.oneSideRows = rows.withSides(pairs);
    this.moments = UnitMoments.of(rows);
    this.oneSideMoments = UnitMoments.of(oneSideRows);
    this.choice =
        new Once<>(
            () ->
                rules
                    .houseChoice(element.element())
                    .map(method -> MethodChoice.ofHouse(rows, taxa, method))
                    .orElseGet(() -> MethodChoice.of(rows, taxa, rules.method())));
    this.conformal = new Once<>(() -> Conformal.of(rows));
    this.unitsByTaxon =
        IntStream.range(0, rows.rows())
            .boxed()
            .collect(
                Collectors.groupingBy(
                    row -> taxa.get(rows.group(row)),
                    Collectors.mapping(rows::unit, Collectors.toSet())));
  }

  /** The sample of a set that is not empty. */
  static Sample of(ElementRows element, List<MeasurementCode> set, ComparisonRules rules) {
    Coordinates coordinates = Coordinates.on(rules.scale(), set.size());
    int columns = coordinates.count();
    List<TaxonName> taxa = element.taxa();
    GroupedRows.Builder rows = GroupedRows.builder(columns, taxa.size());
    SidePairs.Builder pairs = SidePairs.builder(columns);
    for (int unit = 0; unit < element.animals().size(); unit++) {
      AnimalRow animal = element.animals().get(unit);
      for (BoneRow row : rowsOf(animal, rules.counting())) {
        if (row.has(set)) {
          rows.add(taxa.indexOf(animal.taxon()), unit, coordinates.of(row.vector(set)));
        }
      }
      if (rules.counting() == Counting.ANIMALS) {
        addPair(pairs, unit, animal, set, coordinates);
      }
    }
    return new Sample(element, set, rules, rows.build(), pairs.build());
  }

  private static List<BoneRow> rowsOf(AnimalRow animal, Counting counting) {
    return counting == Counting.BONES ? animal.bones() : List.of(animal.mean());
  }

  private static void addPair(
      SidePairs.Builder pairs,
      int unit,
      AnimalRow animal,
      List<MeasurementCode> set,
      Coordinates coordinates) {
    Optional<List<BoneRow>> pair =
        animal.pair().filter(p -> p.get(0).has(set) && p.get(1).has(set));
    if (pair.isPresent()) {
      double[] left = coordinates.of(pair.get().get(0).vector(set));
      double[] right = coordinates.of(pair.get().get(1).vector(set));
      double[] difference = new double[left.length];
      for (int j = 0; j < left.length; j++) {
        difference[j] = left[j] - right[j];
      }
      pairs.add(unit, difference);
    }
  }

  List<MeasurementCode> set() {
    return set;
  }

  /** The taxa of the element, in the order of the groups. */
  List<TaxonName> taxa() {
    return taxa;
  }

  /** The numbers compared of a bone that has the set. */
  double[] numbers(BoneRow bone) {
    return coordinates.of(bone.vector(set));
  }

  /** The method that this sample is compared by, the same whichever animal is out. */
  MethodChoice choice() {
    return choice.get();
  }

  /** How many numbers are compared: p. */
  int columns() {
    return rows.columns();
  }

  GroupedRows rows(Offer offer) {
    return offer == Offer.ONE_SIDE ? oneSideRows : rows;
  }

  /** The moments without a unit; all of them for {@link #STRANGER}. */
  GroupMoments momentsWithout(int unit, Offer offer) {
    return (offer == Offer.ONE_SIDE ? oneSideMoments : moments).without(unit);
  }

  /** The conformal ranks among these animals without a unit. */
  Conformal conformal(int unit) {
    return unit == STRANGER ? conformal.get() : Conformal.of(rows.withoutUnit(unit));
  }

  /** n − k − p + 1 without a unit: the degrees of freedom that typicality rests on. */
  int degreesWithout(int unit) {
    return momentsWithout(unit, Offer.ANIMAL).degreesOfFreedom() - columns() + 1;
  }

  /**
   * The animals without a unit with their holes filled; only where those that have the whole set
   * are too few, and where it can be done.
   */
  Outcome<Filled> filled(int unit) {
    return filled.of(unit);
  }

  private Outcome<Filled> filledAfresh(int unit) {
    if (degreesWithout(unit) >= rules.thresholds().degreesNeeded()) {
      return Outcome.none("Enough animals have the whole set.", "Nothing is to be filled.");
    }
    if (rules.scale() == Scale.PROPORTIONS) {
      return Outcome.none("Proportions need whole rows.", "Compare sizes.");
    }
    return choiceWithHoles()
        .then(c -> Filled.of(withHoles().withoutUnit(unit), taxa, rules.thresholds()));
  }

  /** The method where holes are filled, the same whichever animal is out. */
  Outcome<MethodChoice> choiceWithHoles() {
    return MethodChoice.withHoles(rules.houseChoice(element.element()).orElse(rules.method()));
  }

  /** All animals that have any of the set, each with what it has. */
  RowsWithHoles withHoles() {
    RowsWithHoles.Builder holed = RowsWithHoles.builder(set.size(), taxa.size());
    for (int unit = 0; unit < element.animals().size(); unit++) {
      AnimalRow animal = element.animals().get(unit);
      for (BoneRow row : rowsOf(animal, rules.counting())) {
        Map<Integer, Double> cells = new TreeMap<>();
        for (int j = 0; j < set.size(); j++) {
          int column = j;
          Optional.ofNullable(row.values().get(set.get(j))).ifPresent(v -> cells.put(column, v));
        }
        holed.add(taxa.indexOf(animal.taxon()), unit, cells);
      }
    }
    return holed.build();
  }

  /** The number of an animal, {@link #STRANGER} for one that has no row of this element. */
  int unit(Optional<AnimalId> animal) {
    for (int unit = 0; unit < element.animals().size(); unit++) {
      if (animal.isPresent() && element.animals().get(unit).animal().equals(animal.get())) {
        return unit;
      }
    }
    return STRANGER;
  }

  AnimalRow animal(int unit) {
    return element.animals().get(unit);
  }

  /** Whether an animal other than this one is of the taxon. */
  boolean hasOthers(int unit, TaxonName taxon) {
    Set<Integer> units = unitsByTaxon.getOrDefault(taxon, Set.of());
    return units.size() > (units.contains(unit) ? 1 : 0);
  }

  /** The animals of the element but one that have any of the set, in catalogue order. */
  List<AnimalRow> animalsWithAny(int unit) {
    return IntStream.range(0, element.animals().size())
        .filter(i -> i != unit)
        .mapToObj(this::animal)
        .filter(a -> !a.mean().partOf(set).isEmpty())
        .toList();
  }

  /** The animals of the sample but one, in catalogue order. */
  List<AnimalRow> animalsWithout(int unit) {
    List<AnimalRow> others = new ArrayList<>();
    int last = STRANGER;
    for (int row = 0; row < rows.rows(); row++) {
      if (rows.unit(row) != unit && rows.unit(row) != last) {
        others.add(animal(rows.unit(row)));
      }
      last = rows.unit(row);
    }
    return others;
  }

  /** Hands on each animal of the sample but one with its numbers, in catalogue order. */
  void eachWithout(int unit, BiConsumer<AnimalRow, double[]> each) {
    if (rules.counting() == Counting.BONES) {
      animalsWithout(unit).forEach(a -> each.accept(a, numbers(a.mean())));
      return;
    }
    for (int row = 0; row < rows.rows(); row++) {
      if (rows.unit(row) != unit) {
        each.accept(animal(rows.unit(row)), rows.row(row));
      }
    }
  }

  /** A bone of this side is judged so, unless it is the mean of an animal. */
  static Offer offerOf(org.comparanda.bone.Side side) {
    return side == org.comparanda.bone.Side.AXIAL ? Offer.ANIMAL : Offer.ONE_SIDE;
  }
}
