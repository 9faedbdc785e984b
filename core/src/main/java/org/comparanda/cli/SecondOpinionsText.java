package org.comparanda.cli;

import java.util.Locale;
import org.comparanda.statistics.Interval;
import org.comparanda.suggestion.MethodScore;
import org.comparanda.suggestion.SecondOpinions;

/** All methods side by side as plain text. */
record SecondOpinionsText(Terminal terminal) {
  void write(SecondOpinions opinions) {
    terminal.say(
        opinions.element()
            + ", "
            + Count.of(opinions.measurements().size(), "measurement")
            + " ("
            + String.join(", ", opinions.measurements().stream().map(Object::toString).toList())
            + "), "
            + Count.of(opinions.animals(), "animal")
            + ": each tenth of the animals judged by the other nine.");
    terminal.say("  auto takes " + opinions.byRule() + ".");
    terminal.say("");
    terminal.say("  method            told right               log score  Brier score");
    opinions.methods().forEach(m -> terminal.say(row(m)));
    terminal.say("");
    terminal.say(
        "  A higher log score and a lower Brier score are better. The figures decide nothing by"
            + " themselves; House Rules may name one method for an element.");
  }

  private static String row(MethodScore score) {
    if (score.judgedNone()) {
      return "  %-16s  could not be fitted: too few animals of some taxon"
          .formatted(MethodWord.of(score.method()));
    }
    Interval limits = score.hits().wilson(0.95);
    String right =
        String.format(
            Locale.ROOT,
            "%d of %d (%d to %d %%)",
            score.hits().hits(),
            score.hits().tries(),
            Math.round(100 * limits.lower()),
            Math.round(100 * limits.upper()));
    return String.format(
        Locale.ROOT,
        "  %-16s  %-23s  %9.3f  %11.3f",
        MethodWord.of(score.method()),
        right,
        score.logScore(),
        score.brier());
  }
}
