package org.comparanda.exchange.table;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import org.comparanda.statistics.Outcome;
import org.comparanda.suggestion.Priors;
import org.comparanda.taxon.TaxonName;

/**
 * Reads how likely each taxon was beforehand: a table with the columns {@code taxon} and {@code
 * prior}, in any sum; a third one, {@code source}, says where the numbers come from and is shown
 * with every answer.
 */
public final class PriorTable {
  private PriorTable() {}

  /** The priors, named by their file and its sources; or which row is wrong. */
  public static Outcome<Priors> read(Path path) {
    ProblemList problems = new ProblemList(String.valueOf(path.getFileName()));
    Map<TaxonName, Double> weights = new TreeMap<>();
    Set<String> sources = new LinkedHashSet<>();
    try {
      Optional<RowSource> opened =
          TableOpening.rows(path, Optional.empty(), ReadingProgress.unwatched(), problems);
      if (opened.isPresent()) {
        RowSource file = opened.get();
        List<String> header = file.header();
        int taxon = header.indexOf("taxon");
        int prior = header.indexOf("prior");
        int source = header.indexOf("source");
        if (taxon < 0 || prior < 0) {
          problems.row(1, "the columns taxon and prior are needed", "Head the columns so.");
        } else {
          file.eachRow(
              problems,
              (row, cells) -> {
                take(row, cells.get(taxon).text(), cells.get(prior).text(), weights, problems);
                if (source >= 0 && !cells.get(source).text().isBlank()) {
                  sources.add(cells.get(source).text());
                }
              });
        }
      }
    } catch (IOException unreadable) {
      problems.file("the file can't be read", "Check the name and the folder.");
    }
    if (problems.isEmpty() && weights.values().stream().noneMatch(w -> w > 0)) {
      problems.file("no taxon has a prior above zero", "Give each taxon that can occur one.");
    }
    if (!problems.isEmpty()) {
      return Outcome.none(
          String.join("\n", problems.report().lines()), "Correct the priors and start again.");
    }
    String named = String.valueOf(path.getFileName());
    return Outcome.of(
        Priors.list(
            weights, sources.isEmpty() ? named : named + " (" + String.join("; ", sources) + ")"));
  }

  private static void take(
      long row, String taxon, String prior, Map<TaxonName, Double> weights, ProblemList problems) {
    OptionalDouble weight = NumberText.read(prior, DecimalMark.POINT);
    if (taxon.isEmpty()) {
      problems.column(row, "taxon", "the taxon is missing", "Fill the cell.");
    } else if (weight.isEmpty() || weight.getAsDouble() < 0) {
      problems.cell(row, "prior", prior, "not a number of 0 or more", "Correct the cell.");
    } else if (weights.put(new TaxonName(taxon), weight.getAsDouble()) != null) {
      problems.cell(row, "taxon", taxon, "the taxon stands twice", "Keep one of the rows.");
    }
  }
}
