package org.comparanda.sizeestimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.outside.OutsideCheck;
import org.comparanda.outside.OutsideTable;
import org.comparanda.reference.Animal;
import org.comparanda.reference.Shelf;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.AxisLine;
import org.comparanda.statistics.line.BackTransform;
import org.comparanda.statistics.line.Design;
import org.comparanda.statistics.line.Diagnostics;
import org.comparanda.statistics.line.LeastSquares;
import org.comparanda.statistics.line.LeastSquaresFit;
import org.comparanda.statistics.line.LinePrediction;
import org.comparanda.statistics.line.PercentError;
import org.comparanda.statistics.line.StandardisedMajorAxis;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.TaxonName;
import org.junit.jupiter.api.Test;

/**
 * Published equations, factors and worked figures. Grades of the source sheet: V read in a public
 * text, C computed there from open data, H from memory. Tolerances: half a unit of the last printed
 * digit, wider where said.
 */
class HandbookSizeTest {
  private static final List<PublishedEquation> SHIPPED = ReferenceTables.shipped().equations();

  private record Printed(String fact, String key, double mm, double result, double within) {}

  private static final List<Printed> PRINTED =
      List.of(
          new Printed("C39 V, Teichert 1975", "sheep-withers-humerus", 135, 577.8, 0.05),
          new Printed("C39 V, Teichert 1975", "sheep-withers-radius", 130, 522.6, 0.05),
          new Printed("C39 V, Teichert 1975", "sheep-withers-metacarpal", 120, 586.8, 0.05),
          // 543.62 and 568.89: the source cut the second digit instead of rounding it.
          new Printed("C39 V, Teichert 1975", "sheep-withers-femur", 154, 543.6, 0.1),
          new Printed("C39 V, Teichert 1975", "sheep-withers-tibia", 189, 568.8, 0.1),
          new Printed("C39 V, Teichert 1975", "sheep-withers-metatarsal", 128, 581.1, 0.05),
          // Cattle heights are printed to the mm, cut or rounded.
          new Printed("C42 V, Matolcsi 1970", "cattle-withers-radius", 260, 1118, 1),
          new Printed("C42 V, Matolcsi 1970", "cattle-withers-radius", 292, 1256, 1),
          new Printed("C42 V, Matolcsi 1970", "cattle-withers-metacarpal-cow", 166, 1000, 1.1),
          new Printed("C42 V, Matolcsi 1970", "cattle-withers-metacarpal-cow", 188, 1134, 1),
          new Printed("C42 V, Matolcsi 1970", "cattle-withers-metacarpal-bull", 170, 1076, 1),
          new Printed("C42 V, Matolcsi 1970", "cattle-withers-metacarpal-bull", 188, 1190, 1),
          new Printed("C42 V, Matolcsi 1970", "cattle-withers-metacarpal-ox", 197, 1217, 1),
          new Printed("C42 V, Matolcsi 1970", "cattle-withers-metatarsal-cow", 192, 1023.4, 0.05),
          new Printed("C42 V, Matolcsi 1970", "cattle-withers-metatarsal-cow", 215, 1146, 0.5),
          new Printed("C45 V, Kiesewalter 1888", "horse-withers-metatarsal", 261.5, 1393.8, 0.05),
          new Printed("C17 V, Mobaraki et al.", "mugger-total-length", 200, 141.18, 0.005),
          new Printed("C17 V, Mobaraki et al.", "mugger-total-length", 300, 204.01, 0.005),
          new Printed(
              "C20 V, Whitaker & Whitaker 2008", "crocodilian-rule-of-seven", 500, 3500, 0));

  @Test
  void shippedEquationsGiveThePrintedResults() {
    var check = OutsideCheck.named("handbook-equations", "printed heights and lengths, as named");
    for (Printed p : PRINTED) {
      EquationAnswer answer = value(EquationAnswer.of(equation(p.key()), p.mm(), 0.95));
      check.absolute(
          p.fact() + ", " + p.key() + " at " + p.mm() + " mm",
          p.result(),
          answer.value(),
          p.within());
    }
  }

  @Test
  void theBipedEquationGivesItsOwnFormula() {
    // C05 V: mass (kg) = 0.00016 C^2.73. At C = 100 mm, by hand: 0.00016 · 10^5.46 = 46.1445 kg.
    assertEquals(
        46.1445, value(EquationAnswer.of(equation("biped-body-mass"), 100, 0.95)).value(), 5e-4);
  }

  @Test
  void linesOfLogsWithPublishedErrorsGiveTheirFactors() {
    // C01 H, C02 C: log10 g = 2.749 log10 mm − 1.104, 1384 mm: 33.96 t. Not shipped (H).
    var check = OutsideCheck.named("handbook-log-lines", "equations C01, C02, C08, C16 as named");
    PublishedEquation quadruped =
        logLine("C01", 2.749, -1.104, OptionalDouble.empty(), OptionalInt.of(247));
    check.absolute("C02", 33.96e6, value(EquationAnswer.of(quadruped, 1384, 0.95)).value(), 5e3);
    // C16 H: 2.411 log10(20) − 0.065: 1179.7 g.
    PublishedEquation bird =
        logLine("C16", 2.411, -0.065, OptionalDouble.empty(), OptionalInt.empty());
    check.absolute("C16", 1179.7, value(EquationAnswer.of(bird, 20, 0.95)).value(), 0.05);
    // C08 V: a 0.601, b 2.552, SEE 0.136, n 92: 40 mm is 48.9 kg.
    PublishedEquation carnivoran =
        logLine("C08", 2.552, 0.601, OptionalDouble.of(0.136), OptionalInt.of(92));
    EquationAnswer answer = value(EquationAnswer.of(carnivoran, 40, 0.95));
    check.absolute("C08", 48.9e3, answer.value(), 50);
    // C08 V with k_quantiles' t(0.975, 90) = 1.986674540703772 (R 4.2.2 qt, from memory):
    // factor 10^(1.98667 · 0.136 · √(1 + 1/92)) = 10^0.271651 = 1.86918, by hand.
    check.relative(
        "C08 upper limit", 1.86918, value(answer.prediction()).upper() / answer.value(), 1e-5);
    // C57 H: %SEE = 100 (10^SEE − 1) = 36.8 for SEE 0.136.
    check.absolute("C57", 36.8, 100 * (LineScale.LOG10.back(0.136) - 1), 0.05);
  }

  @Test
  void fiveSkeletonsGiveTheTextbookLineIntervalsAndDiagnostics() {
    // I01 V data; I02–I04 C (textbooks print −3.66, 1.197, 0.994). One unit of
    // the last digit: the sheet does not always round it, e.g. I03 upper is 59.6200648 by hand.
    var check = OutsideCheck.named("handbook-five-skeletons", "I02, I03, I04, C54 to C57");
    double[] femur = {38, 56, 59, 64, 74};
    double[] humerus = {41, 63, 70, 72, 84};
    Design design = Design.of(femur, humerus);
    LeastSquaresFit fit = value(LeastSquares.withIntercept().fit(design));
    check.absolute("I02 intercept", -3.659587, fit.intercept().value(), 1e-6);
    check.absolute("I02 slope", 1.196900, fit.slope(0).value(), 1e-6);
    check.absolute("I02 s", 1.982, fit.residualStandardError(), 5e-4);
    check.absolute("I02 se slope", 0.075085, fit.slope(0).standardError(), 1e-6);
    // The sheet's R2 0.988332 is the square of its rounded r; r itself is given as 0.994149.
    check.absolute("I02 r", 0.994149, Math.sqrt(value(fit.rSquared())), 1e-6);
    LinePrediction p = fit.predict(List.of(50.0), 0.95);
    check.absolute("I03 fit", 56.18542, p.fit(), 1e-5);
    check.absolute("I03 PI lower", 49.00323, p.prediction().lower(), 1e-5);
    check.absolute("I03 PI upper", 63.36761, p.prediction().upper(), 1e-5);
    check.absolute("I03 CI lower", 52.75077, p.confidence().lower(), 1e-5);
    check.absolute("I03 CI upper", 59.62007, p.confidence().upper(), 1e-5);
    LinePrediction ninety = fit.predict(List.of(50.0), 0.90);
    check.absolute("I03 90 % PI lower", 50.87432, ninety.prediction().lower(), 1e-5);
    check.absolute("I03 90 % PI upper", 61.49652, ninety.prediction().upper(), 1e-5);
    Diagnostics d = Diagnostics.of(design, fit);
    check.absolute("I04 first leverage", 0.78559, d.rows().get(0).leverage(), 1e-5);
    check.absolute("I04 third residual", 3.04248, d.rows().get(2).residual(), 1e-5);
    check.absolute(
        "I04 first held-out residual", -3.83668, 41 - value(d.rows().get(0).heldOutFit()), 1e-5);
    check.absolute("I04 PRESS", 35.25468, value(d.press()), 1e-5);
    AxisLine axis = value(StandardisedMajorAxis.withDefaults().fit(design));
    check.absolute("I04 RMA slope", 1.203945, axis.slope(), 1e-6);
    check.absolute("I04 RMA intercept", -4.069594, axis.intercept(), 1e-6);
    // C55 H: RMA slope = OLS slope / r, r = 0.994149 (I02).
    check.absolute("C55", fit.slope(0).value() / axis.r(), axis.slope(), 1e-12);
    LeastSquaresFit logs =
        value(LeastSquares.withIntercept().fit(Design.of(log10(femur), log10(humerus))));
    check.absolute("I04 log slope", 1.085563, logs.slope(0).value(), 1e-6);
    check.absolute("I04 log intercept", -0.097230, logs.intercept().value(), 1e-6);
    check.absolute("I04 log s", 0.0131747, logs.residualStandardError(), 1e-7);
    check.absolute(
        "I04 %SEE", 3.0801, 100 * (LineScale.LOG10.back(logs.residualStandardError()) - 1), 1e-4);
    double[] fitted = new double[5];
    double[] back = new double[5];
    for (int i = 0; i < 5; i++) {
      fitted[i] = logs.at(List.of(Math.log10(femur[i])));
      back[i] = LineScale.LOG10.back(fitted[i]);
    }
    BackTransform factors =
        BackTransform.of(
            humerus, fitted, logs.residualStandardError(), LineScale.LOG10::back, Math.log(10));
    check.absolute("I04 smearing", 1.000279, factors.smearing(), 1e-6);
    check.absolute("I04 mean |PE|", 1.853075, PercentError.of(humerus, back).meanAbsolute(), 1e-6);
  }

  @Test
  void paintedTurtlesGiveTheWorkedLineAndTheMistypedHeightStandsOut() {
    // I12 C and I06d C, from the open copy of Jolicoeur & Mosimann 1960.
    var check = OutsideCheck.named("handbook-turtles", "I12, I06d");
    LeastSquaresFit male = value(LeastSquares.withIntercept().fit(turtles("M", "width_mm")));
    check.absolute("I12 slope", 0.724272, male.slope(0).value(), 1e-6);
    check.absolute("I12 se", 0.049989, male.slope(0).standardError(), 1e-6);
    check.absolute("I12 intercept", 1.055067, male.intercept().value(), 1e-6);
    // One unit of the last digit: in 40-digit decimals it is 0.02522604809, the sheet has ...61.
    check.absolute("I12 s", 0.0252261, male.residualStandardError(), 1e-7);
    LinePrediction p = male.predict(List.of(Math.log(120)), 0.95);
    check.absolute("I12 fit at 120", 4.522513, p.fit(), 1e-6);
    check.absolute("I12 PI lower", 4.468733, p.prediction().lower(), 1e-6);
    check.absolute("I12 PI upper", 4.576294, p.prediction().upper(), 1e-6);
    Design female = turtles("F", "height_mm");
    List<OutsideTable.Row> rows = OutsideTable.read("data/tortues.csv").where("sex", "F").rows();
    int suspect = -1;
    for (int i = 0; i < rows.size(); i++) {
      suspect =
          rows.get(i).text("length_mm").equals("133") && rows.get(i).text("height_mm").equals("41")
              ? i
              : suspect;
    }
    Diagnostics d = Diagnostics.of(female, value(LeastSquares.withIntercept().fit(female)));
    check.absolute("I06d studentised", -5.432, value(d.rows().get(suspect).studentised()), 5e-4);
    check.absolute("I06d height expected", 50.37, Math.exp(d.rows().get(suspect).fitted()), 5e-3);
  }

  @Test
  void outsideThePublishedRangeIsSaidAndAnEquationWithoutErrorHasNoInterval() {
    EquationAnswer giant = value(EquationAnswer.of(equation("mugger-total-length"), 600, 0.95));
    assertTrue(
        giant.warnings().get(0).startsWith("60.00 cm lies outside the published range"),
        giant.warnings().toString());
    assertEquals(Optional.empty(), giant.prediction().value());
    assertEquals(
        "\"-1.0\" is no length.",
        EquationAnswer.of(equation("mugger-total-length"), -1, 0.95)
            .fold(Object::toString, none -> none.reason()));
  }

  @Test
  void anEquationIsComparedOnTheShelfsOwnAnimals() {
    // By hand: kg = 1·mm over animals of 2, 4 and 5 kg at 2, 4 and 4 mm: off by 0, 0 and 25 %.
    PublishedEquation line = equation("C", new PublishedEquation.Line(0, 1), "kg");
    List<Animal> animals = new ArrayList<>();
    for (double[] xy : new double[][] {{2, 2}, {4, 4}, {4, 5}}) {
      animals.add(
          TableShelf.withMass(
              TableShelf.animal(
                  "A" + animals.size(),
                  "Ovis aries",
                  TableShelf.bone(
                      new ElementKey("femur"), Side.LEFT, Map.of(new MeasurementCode("x"), xy[0]))),
              1000 * xy[1],
              "wild",
              Set.of()));
    }
    SizeDesk desk = SizeDesk.of(new Shelf(animals), TableShelf.NO_PROTOCOL);
    EquationOnShelf shelf = value(desk.compare(line, Set.of()));
    assertEquals(
        "On your 3 animal(s) this equation is off by a median of 0.0 %, and too low by 8.3 % on"
            + " average.",
        shelf.sentence());
    assertEquals(
        "No animal on the shelf has \"withers_height\".",
        desk.compare(equation("sheep-withers-radius"), Set.of())
            .fold(Object::toString, none -> none.reason()));
  }

  private static Design turtles(String sex, String y) {
    List<OutsideTable.Row> rows = OutsideTable.read("data/tortues.csv").where("sex", sex).rows();
    return Design.of(
        rows.stream().mapToDouble(r -> Math.log(r.number("length_mm"))).toArray(),
        rows.stream().mapToDouble(r -> Math.log(r.number(y))).toArray());
  }

  private static double[] log10(double[] values) {
    return java.util.Arrays.stream(values).map(Math::log10).toArray();
  }

  private static PublishedEquation equation(String key) {
    return SHIPPED.stream().filter(e -> e.key().equals(key)).findFirst().orElseThrow();
  }

  private static PublishedEquation logLine(
      String key, double slope, double intercept, OptionalDouble error, OptionalInt animals) {
    PublishedEquation e = equation(key, new PublishedEquation.LogLine(10, intercept, slope), "g");
    return new PublishedEquation(
        e.key(),
        e.name(),
        e.taxon(),
        e.appliesTo(),
        e.predicts(),
        e.resultUnit(),
        e.predictor(),
        e.form(),
        e.valid(),
        animals,
        error,
        e.rSquared(),
        e.citation(),
        e.howVerified(),
        e.verified(),
        e.caution(),
        e.worked());
  }

  private static PublishedEquation equation(String key, PublishedEquation.Form form, String unit) {
    return new PublishedEquation(
        key,
        key,
        new TaxonName("any"),
        "",
        "body_mass",
        unit,
        new PublishedEquation.Predictor(new ElementKey("femur"), "x", "", "mm"),
        form,
        Optional.empty(),
        OptionalInt.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        "for this test",
        "",
        false,
        "",
        List.of());
  }

  private static <T> T value(Outcome<T> outcome) {
    return outcome.fold(
        v -> v,
        none -> {
          throw new AssertionError(none.reason());
        });
  }
}
