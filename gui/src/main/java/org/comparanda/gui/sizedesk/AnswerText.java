package org.comparanda.gui.sizedesk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.comparanda.gui.text.Numbers;
import org.comparanda.reference.Animal;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.LineMethod;
import org.comparanda.sizeestimate.SizeEstimate;
import org.comparanda.statistics.Outcome;

/**
 * The answer in words.
 *
 * @param sentence first and large: the estimate with its interval, or why there is none
 * @param detail which line, which correction, how far it can be believed
 * @param cautions each a sentence that the reader must not miss
 */
public record AnswerText(String sentence, String detail, List<String> cautions) {
  public AnswerText {
    cautions = List.copyOf(cautions);
  }

  static AnswerText none(Outcome<?> outcome) {
    return outcome.fold(
        value -> new AnswerText("", "", List.of()),
        none -> new AnswerText(none.reason(), none.remedy(), List.of()));
  }

  static AnswerText of(Sheet sheet, SizeFinding finding, FittedLine line) {
    if (finding.estimate().isEmpty()) {
      return new AnswerText(
          sheet.words().get("answer.waiting", sheet.from().name()),
          lineDetail(sheet, line),
          notes(line));
    }
    Optional<SizeEstimate> estimate = finding.estimate().get().value();
    if (estimate.isEmpty()) {
      return none(finding.estimate().get());
    }
    List<String> cautions = new ArrayList<>(estimate.get().warnings());
    second(sheet, finding).ifPresent(cautions::add);
    recorded(sheet, finding).ifPresent(cautions::add);
    cautions.addAll(notes(line));
    return new AnswerText(
        sheet.predict().name() + " " + figures(sheet, estimate.get(), line) + ".",
        lineDetail(sheet, line) + " " + correction(sheet, estimate.get()),
        cautions);
  }

  /** {@code 2.31 m, from 1.90 to 2.81 m (95 % for one animal)}. */
  private static String figures(Sheet sheet, SizeEstimate e, FittedLine line) {
    String unit = sheet.up().symbol();
    return e.prediction()
        .fold(
            p ->
                sheet
                    .words()
                    .get(
                        "answer.interval",
                        sheet.up().honest(e.estimate(), p.lower(), p.upper(), sheet.locale()),
                        sheet.up().honest(p.lower(), p.lower(), p.upper(), sheet.locale()),
                        sheet.up().honest(p.upper(), p.lower(), p.upper(), sheet.locale()),
                        unit,
                        Math.round(100 * line.question().level()) + " %"),
            none ->
                sheet
                    .words()
                    .get("answer.bare", sheet.up().measured(e.estimate(), sheet.locale())));
  }

  private static String lineDetail(Sheet sheet, FittedLine line) {
    String key = line.method() == LineMethod.OLS ? "detail.ols" : "detail.axis";
    return sheet.words().get(key, sheet.names().of(line), line.n());
  }

  private static String correction(Sheet sheet, SizeEstimate e) {
    String factor = new Numbers(sheet.locale()).fixed(e.factor(), 3);
    return sheet.words().get("correction." + e.correction().word() + ".said", factor);
  }

  private static Optional<String> second(Sheet sheet, SizeFinding finding) {
    Optional<FittedLine> beside = finding.beside().flatMap(b -> b.value());
    Optional<SizeEstimate> estimate = finding.estimateBeside().flatMap(e -> e.value());
    return beside.flatMap(
        line ->
            estimate.map(
                e ->
                    sheet
                        .words()
                        .get("answer.beside", sheet.names().of(line), figures(sheet, e, line))));
  }

  /**
   * What is recorded of the bone's own animal, so that anyone can see how far off the answer is.
   */
  private static Optional<String> recorded(Sheet sheet, SizeFinding finding) {
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

  private static List<String> notes(FittedLine line) {
    return line.notes();
  }
}
