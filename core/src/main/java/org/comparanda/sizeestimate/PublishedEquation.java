package org.comparanda.sizeestimate;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.comparanda.bone.ElementKey;
import org.comparanda.taxon.TaxonName;

/**
 * A size equation from the literature, as the reference tables hold it.
 *
 * @param key unique key, never reused
 * @param name what it gives from what, in words
 * @param taxon the taxon or group that it is meant for
 * @param appliesTo which animals of it, in words (sex, size, living conditions)
 * @param predicts what it gives: withers_height, total_length, body_mass, ...
 * @param resultUnit unit of the result (mm, cm, kg, g)
 * @param predictor what is put in
 * @param form how the result follows from the predictor, with its coefficients
 * @param valid range of the predictor in its unit, empty when not published
 * @param animals number of animals behind it, empty when not known
 * @param standardError residual standard error, on the log scale for a line of logs
 * @param rSquared coefficient of determination
 * @param citation where it was published
 * @param howVerified where its numbers were read
 * @param verified whether its numbers were read rather than remembered
 * @param caution what to be careful about
 * @param worked points that were published or are a hand calculation shown
 */
public record PublishedEquation(
    String key,
    String name,
    TaxonName taxon,
    String appliesTo,
    String predicts,
    String resultUnit,
    Predictor predictor,
    Form form,
    Optional<ValidRange> valid,
    OptionalInt animals,
    OptionalDouble standardError,
    OptionalDouble rSquared,
    String citation,
    String howVerified,
    boolean verified,
    String caution,
    List<Worked> worked) {
  public PublishedEquation {
    worked = List.copyOf(worked);
  }

  /**
   * What is put in.
   *
   * @param code as the source names it; need not be a measurement of the protocol
   * @param description what it is, in words
   * @param unit mm or cm
   */
  public record Predictor(ElementKey element, String code, String description, String unit) {
    /** As a question names it: {@code element.code}. */
    public String name() {
      return element + "." + code;
    }
  }

  /** Range of the predictor, in the predictor's unit. */
  public record ValidRange(double low, double high) {}

  /** A worked point: predictor, result, and the tolerance that the printed rounding allows. */
  public record Worked(double x, double y, double within, String source) {}

  /** Form of the equation. x in the predictor's unit, the result in the result's unit. */
  public sealed interface Form permits Factor, Line, Power, LogLine {
    /** The result for one predictor value, x above zero; no back-transform correction. */
    double at(double x);
  }

  /** y = factor · x. */
  public record Factor(double factor) implements Form {
    @Override
    public double at(double x) {
      return factor * x;
    }
  }

  /** y = intercept + slope · x. */
  public record Line(double intercept, double slope) implements Form {
    @Override
    public double at(double x) {
      return intercept + slope * x;
    }
  }

  /** y = constant · x^exponent. */
  public record Power(double constant, double exponent) implements Form {
    @Override
    public double at(double x) {
      return constant * Math.pow(x, exponent);
    }
  }

  /** log y = intercept + slope · log x, logs to {@code base} (10 or e). */
  public record LogLine(double base, double intercept, double slope) implements Form {
    @Override
    public double at(double x) {
      return Math.pow(base, intercept) * Math.pow(x, slope);
    }
  }
}
