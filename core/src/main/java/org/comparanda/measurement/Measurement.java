package org.comparanda.measurement;

import java.util.List;
import java.util.Optional;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;

/**
 * One measurement of one element, as the protocol files describe it. Lengths in mm.
 *
 * @param element the element measured
 * @param code code within the element
 * @param name short name
 * @param definition what the jaws touch, in our own words
 * @param mistakes what goes wrong
 * @param landmarks the two points on the outline drawing, or empty when there is no drawing
 * @param needs portions on which it can be taken (a distal breadth on whole, distal)
 * @param plausible range of any animal the protocol knows, or empty
 * @param tolerance allowed difference of two takes, as a part of their mean (0.01 = 1 in 100)
 * @param cost relative effort of taking it, 1 = ordinary
 * @param how straight with the caliper, or along the curve with the tape
 * @param source where the definition comes from
 */
public record Measurement(
    ElementKey element,
    MeasurementCode code,
    String name,
    String definition,
    List<String> mistakes,
    Optional<Landmarks> landmarks,
    List<Portion> needs,
    Optional<Range> plausible,
    double tolerance,
    double cost,
    How how,
    String source) {
  public Measurement {
    mistakes = List.copyOf(mistakes);
    needs = List.copyOf(needs);
  }

  /** One that is taken with the caliper, as nearly all are. */
  public Measurement(
      ElementKey element,
      MeasurementCode code,
      String name,
      String definition,
      List<String> mistakes,
      Optional<Landmarks> landmarks,
      List<Portion> needs,
      Optional<Range> plausible,
      double tolerance,
      double cost,
      String source) {
    this(
        element,
        code,
        name,
        definition,
        mistakes,
        landmarks,
        needs,
        plausible,
        tolerance,
        cost,
        How.CALIPER,
        source);
  }

  /** Where the caliper's jaws stand on the outline, in the outline's own coordinates. */
  public record Landmarks(double x1, double y1, double x2, double y2) {}

  /** A range in mm. */
  public record Range(double lowMm, double highMm) {}
}
