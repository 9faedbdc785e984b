package org.comparanda.suggestion;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.BoneInHand;
import org.comparanda.reference.Shelf;
import org.comparanda.statistics.Outcome;
import org.comparanda.taxon.TaxonTree;

/**
 * One shelf, ready to be asked about bones. Immutable to the outside and safe for many threads;
 * samples and trials already reckoned are kept, so that an answer after each reading is quick.
 */
public final class Comparison {
  private static final int ELEMENTS_KEPT = 100;
  private static final int SAMPLES_KEPT = 1000;
  private static final int TRIALS_KEPT = 200;

  private final Shelf shelf;
  private final Protocol protocol;
  private final TaxonTree tree;
  private final ComparisonRules rules;
  private final AnswerRules answers;
  private final String shelfVersion;
  private final Memo<ElementKey, ElementRows> elements;
  private final Memo<ElementKey, List<AnimalPoint>> points;
  private final Memo<MeasurementSet, Sample> samples;
  private final Memo<MeasurementSet, TrialRun> runs;
  private final Memo<MeasurementSet, TrialRun> gates;
  private final Memo<MeasurementSet, Trial> trials;
  private final Memo<MeasurementSet, Outcome<OuterFolds>> folds;

  /** A set of measurements of an element, in the order of the element. */
  private record MeasurementSet(ElementKey element, List<MeasurementCode> codes) {}

  private Comparison(Shelf shelf, Protocol protocol, TaxonTree tree, ComparisonRules rules) {
    this.shelf = shelf;
    this.protocol = protocol;
    this.tree = tree;
    this.rules = rules;
    this.answers = new AnswerRules(rules.thresholds(), tree);
    this.shelfVersion = ShelfVersion.of(shelf);
    this.elements =
        new Memo<>(ELEMENTS_KEPT, key -> ElementRows.of(shelf, protocol, tree, key, rules));
    this.points = new Memo<>(ELEMENTS_KEPT, this::pointsAfresh);
    this.samples =
        new Memo<>(SAMPLES_KEPT, set -> Sample.of(element(set.element()), set.codes(), rules));
    this.runs = new Memo<>(TRIALS_KEPT, this::runAfresh);
    this.folds = new Memo<>(ELEMENTS_KEPT, this::foldsAfresh);
    this.gates = new Memo<>(TRIALS_KEPT, this::gateAfresh);
    this.trials = new Memo<>(TRIALS_KEPT, this::reportAfresh);
  }

  /** A comparison with the animals of a shelf under the given rules. */
  public static Comparison of(
      Shelf shelf, Protocol protocol, TaxonTree tree, ComparisonRules rules) {
    Priors priors = rules.priors().forNames(shelf.taxa(), tree);
    return new Comparison(shelf, protocol, tree, rules.withPriors(priors));
  }

  public ComparisonRules rules() {
    return rules;
  }

  /** What the shelf says of a bone: exactly one answer for every input. */
  public Suggestion suggest(BoneInHand bone) {
    return new Bench(this, bone).suggest();
  }

  /** The trial of all measurements that the shelf has for an element. */
  public Trial trial(ElementKey element) {
    return trial(element, element(element).codes());
  }

  /**
   * The trial of a set of measurements: every animal of the shelf left out in turn and offered with
   * the part of the set that it has. Codes that the shelf lacks are left out; no animals, no rows.
   */
  public Trial trial(ElementKey element, List<MeasurementCode> set) {
    return trials.of(set(element, set));
  }

  /** The trial with each taxon taken off the shelf in turn, all measurements of the element. */
  public StrangerTrial strangers(ElementKey element) {
    return strangers(element, element(element).codes());
  }

  /** The trial with each taxon taken off the shelf in turn. */
  public StrangerTrial strangers(ElementKey element, List<MeasurementCode> set) {
    return Strangers.of(this, element, set);
  }

  /** As {@link #secondOpinions(ElementKey, List, BooleanSupplier)}, on all its measurements. */
  public Outcome<SecondOpinions> secondOpinions(ElementKey element, BooleanSupplier stopped) {
    return secondOpinions(element, element(element).codes(), stopped);
  }

  /**
   * All methods compared by ten outer folds of the animals that have the whole set; kept once done.
   * It may take minutes on a large shelf: not for the thread of a window.
   *
   * @param stopped asked often, inside folds too; when it says yes, the comparison ends without
   *     figures, and goes on from the methods that were done when it is asked again
   */
  public Outcome<SecondOpinions> secondOpinions(
      ElementKey element, List<MeasurementCode> codes, BooleanSupplier stopped) {
    MeasurementSet set = set(element, codes);
    if (!Coordinates.possible(rules.scale(), set.codes().size())) {
      return Outcome.none("There are too few measurements to compare.", "Name more of them.");
    }
    Sample sample = sample(element, set.codes());
    return folds
        .of(set)
        .then(outer -> outer.scores(stopped))
        .then(scores -> Outcome.of(compared(set, sample, scores)));
  }

  private Outcome<OuterFolds> foldsAfresh(MeasurementSet set) {
    Sample sample = sample(set.element(), set.codes());
    return rules.priors().among(sample).then(priors -> Outcome.of(new OuterFolds(sample, priors)));
  }

  private SecondOpinions compared(MeasurementSet set, Sample sample, List<MethodScore> scores) {
    return new SecondOpinions(
        set.element(),
        set.codes(),
        scores.get(0).hits().tries(),
        OuterFolds.FOLDS,
        OuterFolds.SEED,
        MethodChoice.of(sample.rows(Sample.Offer.ANIMAL), sample.taxa(), Method.AUTO).reason(),
        scores,
        shelfVersion);
  }

  /**
   * Reckons ahead what answers with one more reading will rest on, so that they come at once.
   *
   * @param stopped asked before each measurement
   */
  public void prepare(BoneInHand bone, BooleanSupplier stopped) {
    ElementRows rows = element(bone.element());
    List<MeasurementCode> taken = rows.codes().stream().filter(bone.values()::containsKey).toList();
    for (MeasurementCode code : rows.codes()) {
      if (!taken.contains(code) && !stopped.getAsBoolean()) {
        List<MeasurementCode> larger =
            rows.codes().stream().filter(c -> c.equals(code) || taken.contains(c)).toList();
        if (Coordinates.possible(rules.scale(), larger.size())) {
          gate(bone.element(), larger);
        }
      }
    }
  }

  /** The comparative animals as dots for the picture, the bone's own animal left out. */
  public List<AnimalPoint> points(ElementKey element, BoneInHand bone) {
    List<AnimalPoint> all = points.of(element);
    Optional<AnimalId> own = bone.animal().map(shelf::number);
    return own.isEmpty()
        ? all
        : all.stream().filter(p -> own.filter(p.animal()::equals).isEmpty()).toList();
  }

  /**
   * The animals that an answer of this comparison rests on, each with a print of its taxon and the
   * values compared: a changed print is a changed animal.
   */
  public Map<AnimalId, String> animalsBehind(Suggestion suggestion) {
    return AnimalsBehind.of(element(suggestion.element()), suggestion);
  }

  /** Hash of the rows that the shelf holds; equal shelves have equal versions. */
  public String shelfVersion() {
    return shelfVersion;
  }

  private List<AnimalPoint> pointsAfresh(ElementKey element) {
    return element(element).animals().stream()
        .sorted(Comparator.comparing(AnimalRow::animal))
        .map(this::point)
        .toList();
  }

  private AnimalPoint point(AnimalRow animal) {
    Map<MeasurementCode, Double> values = new TreeMap<>(animal.mean().values());
    values.replaceAll((code, value) -> ElementRows.offScale(value, rules.scale()));
    return new AnimalPoint(animal.animal(), animal.taxon(), animal.drawer(), values);
  }

  Shelf shelf() {
    return shelf;
  }

  Protocol protocol() {
    return protocol;
  }

  TaxonTree tree() {
    return tree;
  }

  AnswerRules answers() {
    return answers;
  }

  ElementRows element(ElementKey key) {
    return elements.of(key);
  }

  Sample sample(ElementKey element, List<MeasurementCode> codes) {
    return samples.of(new MeasurementSet(element, List.copyOf(codes)));
  }

  TrialRun run(ElementKey element, List<MeasurementCode> codes) {
    return runs.of(set(element, codes));
  }

  /** The part of the trial that an answer on this very set rests on. */
  TrialRun gate(ElementKey element, List<MeasurementCode> codes) {
    return gates.of(set(element, codes));
  }

  NextBest nextBest(ElementKey element) {
    return new NextBest(protocol, rules, codes -> sample(element, codes));
  }

  private MeasurementSet set(ElementKey element, List<MeasurementCode> codes) {
    return new MeasurementSet(
        element, element(element).codes().stream().filter(codes::contains).toList());
  }

  private TrialRun runAfresh(MeasurementSet set) {
    return TrialRun.of(
        element(set.element()), set.codes(), rules, answers, codes -> sample(set.element(), codes));
  }

  private TrialRun gateAfresh(MeasurementSet set) {
    return TrialRun.ofWholeAnimals(
        element(set.element()), set.codes(), rules, answers, codes -> sample(set.element(), codes));
  }

  private Trial reportAfresh(MeasurementSet set) {
    String method =
        set.codes().isEmpty()
            ? "none: nothing was measured"
            : sample(set.element(), set.codes()).choice().reason();
    return TrialReport.of(runs.of(set), method, rules, codes -> sample(set.element(), codes));
  }
}
