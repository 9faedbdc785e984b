package org.comparanda.gui.sizedesk;

import java.util.List;
import java.util.Locale;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;
import org.comparanda.sizeestimate.SizeEstimate;
import org.comparanda.sizeestimate.UndecidedTaxon;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.line.PredictionInterval;

/** Puts a mixture of lines into words. */
record UndecidedText(Words words, Locale locale, Quantity wanted) {
  AnswerText mixture(UndecidedTaxon size) {
    return size.mixture()
        .fold(
            m ->
                new AnswerText(
                    wanted.name() + " " + figures(m.median(), m.prediction()) + ".",
                    m.uncoveredShare() > 0
                        ? words.get(
                            "undecided.uncovered",
                            new Numbers(locale).fixed(100 * m.uncoveredShare(), 1))
                        : words.get("undecided.detail"),
                    List.of()),
            none ->
                new AnswerText(words.said(none.reason()), words.said(none.remedy()), List.of()));
  }

  String own(Outcome<SizeEstimate> estimate) {
    return estimate.fold(
        e ->
            e.prediction()
                .fold(
                    p -> figures(e.estimate(), p),
                    none ->
                        ShownUnit.of(wanted.unit(), e.estimate()).measured(e.estimate(), locale)),
        none -> words.said(none.reason()));
  }

  private String figures(double estimate, PredictionInterval p) {
    ShownUnit unit = ShownUnit.of(wanted.unit(), estimate);
    return words.get(
        "answer.interval",
        unit.honest(estimate, p.lower(), p.upper(), locale),
        unit.honest(p.lower(), p.lower(), p.upper(), locale),
        unit.honest(p.upper(), p.lower(), p.upper(), locale),
        unit.after(),
        new Numbers(locale).upTo(100 * p.level(), 1) + " %");
  }
}
