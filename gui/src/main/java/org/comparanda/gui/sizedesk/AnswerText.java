package org.comparanda.gui.sizedesk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;
import org.comparanda.sizeestimate.FittedLine;
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

  static AnswerText none(Outcome<?> outcome, Words words) {
    return outcome.fold(
        value -> new AnswerText("", "", List.of()),
        none -> new AnswerText(words.said(none.reason()), words.said(none.remedy()), List.of()));
  }

  static AnswerText of(Sheet sheet, SizeFinding finding, FittedLine line) {
    Cautions cautions = new Cautions(sheet, finding);
    if (finding.estimate().isEmpty()) {
      List<String> said = new ArrayList<>(cautions.ofBones());
      line.notes().forEach(note -> said.add(sheet.words().said(note)));
      return new AnswerText(
          sheet.words().get("answer.waiting", missing(sheet, finding, line)),
          lineDetail(sheet, finding, line),
          said);
    }
    Optional<SizeEstimate> estimate = finding.estimate().get().value();
    if (estimate.isEmpty()) {
      return none(finding.estimate().get(), sheet.words());
    }
    List<String> said = new ArrayList<>(cautions.of(estimate.get(), line));
    second(sheet, finding).ifPresent(said::add);
    cautions.recorded().ifPresent(said::add);
    line.notes().forEach(note -> said.add(sheet.words().said(note)));
    return new AnswerText(
        sheet.predict().name() + " " + figures(sheet, estimate.get(), line) + ".",
        lineDetail(sheet, finding, line) + " " + correction(sheet, estimate.get()),
        said);
  }

  private static String missing(Sheet sheet, SizeFinding finding, FittedLine line) {
    return line.question().from().stream()
        .filter(key -> !finding.ask().values().containsKey(key))
        .map(sheet::name)
        .collect(Collectors.joining(", "));
  }

  /** {@code 2.31 m, from 1.90 to 2.81 m (95 % for one animal)}. */
  private static String figures(Sheet sheet, SizeEstimate e, FittedLine line) {
    String unit = sheet.up().after();
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
                        sheet.level(line)),
            none ->
                sheet
                    .words()
                    .get("answer.bare", sheet.up().measured(e.estimate(), sheet.locale())));
  }

  private static String lineDetail(Sheet sheet, SizeFinding finding, FittedLine line) {
    String key =
        switch (line.method()) {
          case OLS -> "detail.ols";
          case SMA, MA -> "detail.axis";
          case INVERSE -> "detail.inverse";
          case PGLS -> "detail.pgls";
        };
    String lambda =
        line.lambda().value().map(l -> new Numbers(sheet.locale()).fixed(l, 2)).orElse("");
    String said = sheet.words().get(key, sheet.names().of(line), line.n(), lambda);
    return gain(sheet, finding).map(g -> said + " " + g).orElse(said);
  }

  /** What further bones bring over the best single one. */
  private static Optional<String> gain(Sheet sheet, SizeFinding finding) {
    return finding
        .several()
        .map(
            s -> {
              String single = sheet.name(s.bestSingle().question().from().get(0));
              if (s.best().question().from().size() == 1) {
                return sheet.words().get("several.one", single);
              }
              String gain = new Numbers(sheet.locale()).fixed(Math.abs(s.gainPercent()), 0);
              return sheet
                  .words()
                  .get(s.gainPercent() >= 0 ? "several.gain" : "several.loss", gain, single);
            });
  }

  private static String correction(Sheet sheet, SizeEstimate e) {
    String factor = new Numbers(sheet.locale()).fixed(e.factor(), 3);
    return sheet.words().get("correction." + e.correction().word() + ".said", factor);
  }

  /** The effect of the choice of taxa. */
  private static Optional<String> second(Sheet sheet, SizeFinding finding) {
    Optional<SizeEstimate> estimate = finding.estimateBeside().flatMap(e -> e.value());
    return finding
        .beside()
        .flatMap(
            line ->
                estimate.map(
                    e ->
                        sheet
                            .words()
                            .get(
                                "answer.beside", sheet.names().of(line), figures(sheet, e, line))));
  }
}
