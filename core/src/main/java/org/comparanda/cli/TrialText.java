package org.comparanda.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.comparanda.statistics.Interval;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.Proportion;
import org.comparanda.suggestion.StrangerTrial;
import org.comparanda.suggestion.Trial;
import org.comparanda.taxon.TaxonName;

/** A trial as plain text: the rate first, then both rates for each taxon, then what went wrong. */
record TrialText(Terminal terminal) {
  void write(Trial trial) {
    terminal.say(
        trial.element()
            + ", "
            + Count.of(trial.measurements().size(), "measurement")
            + " ("
            + String.join(", ", trial.measurements().stream().map(Object::toString).toList())
            + "): "
            + rate(trial.hits())
            + " told right, each animal left out in turn.");
    terminal.say("  Method " + trial.method() + "; priors " + trial.priors() + ".");
    terminal.say("");
    int width = trial.taxa().stream().mapToInt(t -> t.taxon().value().length()).max().orElse(0);
    String form = "  %-" + Math.max(width, 5) + "s  %-24s  %-24s  %s";
    terminal.say(
        form(form, "taxon", "of true ones, called so", "of those called so, true", "else"));
    for (Trial.TaxonRate taxon : trial.taxa()) {
      terminal.say(
          form(
              form,
              taxon.taxon().value(),
              rate(taxon.hits()),
              rate(taxon.called()),
              others(taxon.taxon(), trial.table())));
    }
    terminal.say("");
    terminal.say("  By bone: " + trial.bones().hits() + " of " + trial.bones().tries() + ".");
    terminal.say(
        "  Mean log of the true taxon's share "
            + number(trial.logScore())
            + "; Brier score "
            + number(trial.brier())
            + ".");
    reliability(trial.reliability());
    trial
        .calibratedList()
        .value()
        .ifPresent(
            q ->
                terminal.say(
                    "  The calibrated list held the true taxon in "
                        + rate(q.holdsTruth())
                        + ", "
                        + Figures.five(q.meanLength())
                        + " taxa long on average."));
  }

  private void reliability(List<Trial.ShareBand> bands) {
    terminal.say("");
    terminal.say("  largest share   mean    right");
    for (Trial.ShareBand band : bands) {
      terminal.say(
          String.format(
              Locale.ROOT,
              "  %4.2f to %4.2f    %5.3f   %s",
              band.from(),
              band.below(),
              band.meanShare(),
              rate(band.hits())));
    }
  }

  void write(StrangerTrial strangers) {
    write(strangers.trial());
    StrangerTrial.Stranger all = strangers.stranger();
    terminal.say("");
    terminal.say(
        "  Strangers (each taxon off the shelf in turn): of "
            + Count.of(all.bones(), "bone")
            + ", "
            + all.fitsOne()
            + " answered as one taxon, "
            + all.nothingFits()
            + " \"nothing fits\"; by a share of 0.95 alone it would have been "
            + all.plainShare95()
            + ".");
    for (StrangerTrial.Stranger taxon : strangers.taxa()) {
      terminal.say(
          "    "
              + taxon.taxon()
              + ": "
              + Count.of(taxon.bones(), "bone")
              + ", one taxon "
              + taxon.fitsOne()
              + ", nothing fits "
              + taxon.nothingFits()
              + ", share of 0.95 alone "
              + taxon.plainShare95());
    }
  }

  private static String form(String form, String... cells) {
    return String.format(Locale.ROOT, form, (Object[]) cells).stripTrailing();
  }

  private static String rate(Proportion rate) {
    if (rate.tries() == 0) {
      return "none";
    }
    Interval limits = rate.wilson(0.95);
    return rate.hits()
        + " of "
        + rate.tries()
        + " ("
        + Math.round(100 * limits.lower())
        + " to "
        + Math.round(100 * limits.upper())
        + " %)";
  }

  private static String others(TaxonName taxon, Map<TaxonName, Map<TaxonName, Integer>> table) {
    List<String> others = new ArrayList<>();
    table
        .getOrDefault(taxon, Map.of())
        .forEach(
            (called, count) -> {
              if (!called.equals(taxon) && count > 0) {
                others.add(called + " " + count);
              }
            });
    return String.join(", ", others);
  }

  private static String number(Outcome<Double> outcome) {
    return outcome.fold(Figures::five, none -> "not estimable (" + none.reason() + ")");
  }
}
