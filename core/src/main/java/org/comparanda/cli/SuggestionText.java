package org.comparanda.cli;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.comparanda.suggestion.DrawerEntry;
import org.comparanda.suggestion.NearestAnimal;
import org.comparanda.suggestion.NextMeasurement;
import org.comparanda.suggestion.Suggestion;
import org.comparanda.suggestion.TaxonFit;

/**
 * One suggestion as plain text: the answer first, then share and typicality side by side, the
 * animals to look at, what to measure next.
 */
record SuggestionText(Terminal terminal) {
  private static final int SHOWN = 5;

  void write(Suggestion s) {
    terminal.say("Bone " + s.bone() + ", " + s.element());
    terminal.say("  " + s.sentence());
    if (!s.sampleLine().isEmpty()) {
      terminal.say("  " + s.sampleLine());
    }
    s.details().forEach(d -> terminal.say("  " + d));
    if (!s.taxa().isEmpty()) {
      taxa(s.taxa());
    }
    if (!s.drawer().isEmpty()) {
      terminal.say(
          "  In the drawer: "
              + s.drawer().stream()
                  .map(SuggestionText::ruledOut)
                  .collect(Collectors.joining(", ")));
    }
    if (!s.nearest().isEmpty()) {
      terminal.say("  Look at");
      s.nearest().forEach(n -> terminal.say("    " + nearest(n)));
    }
    if (!s.next().isEmpty()) {
      terminal.say("  Measure next");
      s.next().forEach(n -> terminal.say("    " + next(n)));
    }
    if (!s.taxa().isEmpty()) {
      terminal.say("  Method " + s.basis().method() + "; priors " + s.basis().priors() + ".");
      terminal.say("  " + s.basis().missing().words());
    }
    s.warnings().forEach(w -> terminal.say("  Careful: " + w));
    terminal.say("");
  }

  private void taxa(List<TaxonFit> taxa) {
    terminal.say("     share  typicality  animals  taxon");
    taxa.stream().limit(SHOWN).forEach(fit -> terminal.say(row(fit)));
    if (taxa.size() > SHOWN) {
      TaxonFit next = taxa.get(SHOWN);
      terminal.say(
          "    and "
              + Count.of(taxa.size() - SHOWN, "taxon", "taxa")
              + " of share "
              + Figures.chance(next.share())
              + " or less, typicality "
              + Figures.chance(
                  taxa.stream().skip(SHOWN).mapToDouble(TaxonFit::typicality).max().orElse(0))
              + " or less");
    }
  }

  private static String row(TaxonFit fit) {
    return String.format(
        Locale.ROOT,
        "  %8s  %10s  %7d  %s%s",
        Figures.chance(fit.share()),
        Figures.chance(fit.typicality()),
        fit.animals(),
        fit.taxon(),
        fit.thin() ? " (few animals)" : "");
  }

  private static String ruledOut(DrawerEntry entry) {
    return entry.taxon()
        + (entry.standing() == DrawerEntry.Standing.TOO_FEW_TO_RULE_OUT
            ? " (too few animals to rule out)"
            : "");
  }

  private static String nearest(NearestAnimal animal) {
    return animal.animal()
        + ", "
        + animal.taxon()
        + animal.drawer().map(d -> ", drawer " + d).orElse(", no drawer of ours")
        + String.format(Locale.ROOT, ", distance %.2f", animal.distance());
  }

  private static String next(NextMeasurement next) {
    return next.measurement() + ": " + next.sentence();
  }
}
