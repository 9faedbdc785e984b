package org.comparanda.sizeestimate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.BoneInHand;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.BackTransform;
import org.comparanda.statistics.line.Diagnostics;
import org.comparanda.taxon.TaxonName;

/**
 * A size line fitted on the shelf: its coefficients, its errors, its animals, and what it says of a
 * bone. Immutable.
 */
public final class FittedLine {
  private final SizeQuestion question;
  private final Quantity predict;
  private final List<Quantity> from;
  private final LineRows rows;
  private final LineModel model;
  private final Correction correction;
  private final WithoutOne without;

  FittedLine(
      SizeQuestion question,
      Quantity predict,
      List<Quantity> from,
      LineRows rows,
      LineModel model,
      Correction correction,
      WithoutOne without) {
    this.question = question;
    this.predict = predict;
    this.from = List.copyOf(from);
    this.rows = rows;
    this.model = model;
    this.correction = correction;
    this.without = without;
  }

  /** What was asked: method, scale, predictors, level. */
  public SizeQuestion question() {
    return question;
  }

  /** The same line with estimates moved by a correction; it stands naive (the median) at first. */
  public FittedLine withCorrection(Correction other) {
    return new FittedLine(
        question,
        predict,
        from,
        rows,
        model,
        other,
        without.changed(line -> line.withCorrection(other)));
  }

  /** The correction that moves estimates. */
  public Correction correction() {
    return correction;
  }

  /** How the line was fitted. */
  public LineMethod method() {
    return question.line();
  }

  /** Scale of the fit. */
  public LineScale scale() {
    return question.scale();
  }

  /** Number of points: animals, or taxa for a line on a tree. */
  public int n() {
    return rows.points().size();
  }

  /** The taxa that feed the line, in alphabetical order; empty for a table without taxa. */
  public List<TaxonName> taxa() {
    return points().stream().flatMap(p -> p.taxon().stream()).distinct().sorted().toList();
  }

  /** Intercept on the scale of the fit. */
  public LineCoefficient intercept() {
    return model.intercept();
  }

  /** Slopes on the scale of the fit, in the order of the predictors. */
  public List<LineCoefficient> slopes() {
    return model.slopes();
  }

  /** √(residual sum of squares / degrees of freedom), on the scale of the fit. */
  public double residualStandardError() {
    return model.residualStandardError();
  }

  /** Points minus coefficients. */
  public int degreesOfFreedom() {
    return model.degreesOfFreedom();
  }

  /** Part of the spread of y that the line explains, on the scale of the fit. */
  public Outcome<Double> rSquared() {
    return model.rSquared();
  }

  /** Smallest and largest value of each predictor, own units. */
  public List<PredictorRange> xRange() {
    List<PredictorRange> ranges = new ArrayList<>();
    for (int j = 0; j < from.size(); j++) {
      int column = j;
      ranges.add(
          new PredictorRange(
              from.get(j).name(),
              points().stream().mapToDouble(p -> p.x().get(column)).min().orElseThrow(),
              points().stream().mapToDouble(p -> p.x().get(column)).max().orElseThrow()));
    }
    return ranges;
  }

  /** The four back-transform factors; not estimable on raw values and for the major axes. */
  public Outcome<BackTransform> corrections() {
    if (!scale().logs()) {
      return Outcome.none(
          "A line on raw values needs no correction.", "Ask for log10 or ln to see the factors.");
    }
    if (method() == LineMethod.SMA || method() == LineMethod.MA) {
      return Outcome.none(
          "A major axis is no predicting line, so it has no correction.", "Ask for ols or pgls.");
    }
    if (method() == LineMethod.INVERSE) {
      return Outcome.none(
          "A line read backwards has its residuals on the bone, so it has no correction.",
          "Ask for ols or pgls.");
    }
    double[] y = points().stream().mapToDouble(LinePoint::y).toArray();
    double[] fitted = points().stream().mapToDouble(this::fitted).toArray();
    return Outcome.of(
        BackTransform.of(y, fitted, residualStandardError(), scale()::back, scale().lnOfBase()));
  }

  /** Mean of 100·|y − ŷ₋ᵢ|/ŷ₋ᵢ, each animal held out in turn. */
  public Outcome<Double> meanAbsolutePercentError() {
    return heldOut().meanAbsolutePercent();
  }

  /** √(PRESS/n) on the scale of the fit. */
  public Outcome<Double> pressRootMeanSquare() {
    return heldOut().pressRootMeanSquare();
  }

  /** λ, likelihood and contrasts, for a line on a tree. */
  public Outcome<TreeFigures> onTree() {
    return model.onTree();
  }

  /** λ, for a line on a tree. */
  public Outcome<Double> lambda() {
    return onTree().then(tree -> Outcome.of(tree.lambda()));
  }

  /** How each point sits on the line, in the order of the points; for least squares only. */
  public Outcome<Diagnostics> diagnostics() {
    return model instanceof OlsModel ols
        ? Outcome.of(ols.diagnostics())
        : Outcome.none(
            "Leverage and Cook's distance belong to a least squares line.", "Choose ols.");
  }

  /** The points of the line, own units. */
  public List<LinePoint> points() {
    return rows.points();
  }

  /** What was left out of the line, and what a reader must know of it: sentences. */
  public List<String> notes() {
    return rows.leftOut();
  }

  /** Unit of the estimate: mm, g, or empty for a plain number. */
  public String unit() {
    return predict.unit();
  }

  /** Line and bands at one x, own unit; only for a line with one predictor. */
  public Outcome<LineBand> band(double x) {
    if (from.size() != 1) {
      return Outcome.none("A line with several predictors has no flat picture.", "Choose one.");
    }
    double at = scale().forward(x);
    if (!Double.isFinite(at)) {
      return Outcome.none("\"" + x + "\" has no logarithm.", "Draw the line above zero.");
    }
    return model
        .predict(List.of(at), Optional.empty(), question.level())
        .then(
            p ->
                p.confidence()
                    .then(
                        mean ->
                            p.prediction()
                                .then(
                                    one ->
                                        Outcome.of(
                                            new LineBand(
                                                x,
                                                scale().back(p.fit()),
                                                mean.through(scale()::back),
                                                one.through(scale()::back))))));
  }

  /** The estimate for one value per predictor, by name as asked. */
  public Outcome<SizeEstimate> estimate(Map<String, Double> values) {
    return estimate(values, Optional.empty());
  }

  /** The estimate for an animal of that taxon: on a tree its own place there is used. */
  public Outcome<SizeEstimate> estimate(Map<String, Double> values, Optional<TaxonName> taxon) {
    return LineAnswer.of(this, model, predict, from, correction).estimate(values, taxon);
  }

  /** Where a bone of that taxon is put; empty where the line stands on no tree. */
  public Optional<TreePlace> place(Optional<TaxonName> taxon) {
    return model.place(taxon);
  }

  /** The estimate for one bone; its own animal is left out of the line. */
  public Outcome<SizeEstimate> estimate(BoneInHand bone) {
    return estimate(List.of(bone));
  }

  /** The estimate for several bones of one animal, which is left out of the line. */
  public Outcome<SizeEstimate> estimate(List<BoneInHand> bones) {
    Map<String, Double> values = new HashMap<>();
    Optional<AnimalId> own = Optional.empty();
    Optional<TaxonName> taxon = Optional.empty();
    for (BoneInHand bone : bones) {
      if (bone.state().keptOutOfFits()) {
        return Outcome.none(
            "Bone " + bone.id() + " is young, damaged, a cast or the like.",
            "A line of sound, grown animals does not hold for it.");
      }
      own = own.or(bone::animal);
      taxon = taxon.or(bone::taxon);
      from.forEach(q -> q.of(bone).ifPresent(v -> values.put(q.name(), v)));
    }
    Optional<AnimalId> out =
        own.map(without.number())
            .filter(id -> points().stream().anyMatch(p -> p.animals().contains(id)));
    Optional<TaxonName> of = taxon;
    return out.isEmpty()
        ? estimate(values, of)
        : without.fit().apply(out.get()).then(line -> line.estimate(values, of));
  }

  /** Whether the line keeps its promises; only for an ordinary line. Takes about a second. */
  public Outcome<LineChecks> checks() {
    return model instanceof OlsModel ols
        ? Outcome.of(LineChecks.of(this, rows.design(scale()), ols.fit(), question.level()))
        : Outcome.none("These checks belong to an ordinary line.", "Ask for ols to see them.");
  }

  double fitted(LinePoint point) {
    return model.at(point.x().stream().map(scale()::forward).toList(), point.taxon());
  }

  LineModel model() {
    return model;
  }

  private HeldOutError heldOut() {
    return HeldOutError.of(points(), model.heldOutFits(), scale());
  }

  Outcome<Placed> predict(List<Double> x, Optional<TaxonName> taxon) {
    return model.predict(x, taxon, question.level());
  }
}
