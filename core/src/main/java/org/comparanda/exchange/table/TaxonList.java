package org.comparanda.exchange.table;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.statistics.Outcome;
import org.comparanda.taxon.HouseTaxon;
import org.comparanda.taxon.TaxonName;

/**
 * Reads names of taxa from a table whose header has terms of the Darwin Core class Taxon: {@code
 * scientificName} is needed; {@code taxonID}, {@code scientificNameAuthorship}, {@code taxonRank},
 * {@code parentNameUsage} or {@code parentNameUsageID}, {@code acceptedNameUsage} or {@code
 * acceptedNameUsageID}, {@code taxonomicStatus}, {@code vernacularName} and {@code nameAccordingTo}
 * are taken where they are. Other columns are left aside.
 */
public final class TaxonList {
  private static final Set<String> SYNONYMS =
      Set.of("synonym", "heterotypic synonym", "homotypic synonym", "junior synonym", "misapplied");

  private final ProblemList problems;
  private final String file;
  private final List<Line> lines = new ArrayList<>();
  private final Map<String, Line> byId = new HashMap<>();
  private final Map<TaxonName, Line> byName = new LinkedHashMap<>();

  private TaxonList(String file) {
    this.file = file;
    problems = new ProblemList(file);
  }

  /** One row, its cells by term. */
  private record Line(long row, Map<String, String> cells) {
    String cell(String term) {
      return cells.getOrDefault(term, "");
    }

    TaxonName name() {
      String author = cell("scientificNameAuthorship");
      String whole = cell("scientificName");
      String bare =
          !author.isEmpty() && whole.endsWith(" " + author)
              ? whole.substring(0, whole.length() - author.length() - 1)
              : whole;
      return new TaxonName(bare.strip());
    }
  }

  /** All names of the file, or every problem with it. */
  public static Outcome<List<HouseTaxon>> read(Path path) {
    return new TaxonList(String.valueOf(path.getFileName())).taxa(path);
  }

  private Outcome<List<HouseTaxon>> taxa(Path path) {
    try {
      Optional<RowSource> table =
          TableOpening.rows(path, Optional.empty(), ReadingProgress.unwatched(), problems);
      if (table.isPresent()) {
        lines(table.get());
      }
    } catch (IOException unreadable) {
      problems.file("the file can't be read", "Check the name and the folder.");
    }
    List<HouseTaxon> taxa = lines.stream().map(this::taxon).toList();
    if (problems.isEmpty() && taxa.isEmpty()) {
      problems.file("there is no row", "Give at least one name.");
    }
    return problems.isEmpty()
        ? Outcome.of(taxa)
        : Outcome.none(
            String.join("\n", problems.report().lines()), "Correct the file and start again.");
  }

  private void lines(RowSource table) throws IOException {
    List<String> header =
        table.header().stream().map(term -> term.replaceAll("^.*[:/#]", "")).toList();
    if (!header.contains("scientificName")) {
      problems.row(1, "the column scientificName is missing", "Head the columns with the terms.");
      return;
    }
    table.eachRow(
        problems,
        (row, cells) -> {
          Map<String, String> byTerm = new HashMap<>();
          for (int i = 0; i < header.size(); i++) {
            byTerm.put(header.get(i), cells.get(i).text());
          }
          take(new Line(row, byTerm));
        });
  }

  private void take(Line line) {
    if (line.cell("scientificName").isEmpty()) {
      problems.column(line.row(), "scientificName", "the name is missing", "Fill the cell.");
      return;
    }
    if (byName.put(line.name(), line) != null) {
      problems.cell(
          line.row(),
          "scientificName",
          line.cell("scientificName"),
          "the name stands twice",
          "Keep one of the rows.");
    }
    if (!line.cell("taxonID").isEmpty() && byId.put(line.cell("taxonID"), line) != null) {
      problems.cell(
          line.row(), "taxonID", line.cell("taxonID"), "the ID stands twice", "Give each its own.");
    }
    lines.add(line);
  }

  private HouseTaxon taxon(Line line) {
    Optional<TaxonName> accepted =
        named(line, "acceptedNameUsage").filter(name -> !name.equals(line.name()));
    boolean synonym = SYNONYMS.contains(line.cell("taxonomicStatus").toLowerCase(Locale.ROOT));
    if (synonym && accepted.isEmpty()) {
      problems.cell(
          line.row(),
          "taxonomicStatus",
          line.cell("taxonomicStatus"),
          "no accepted name is given for the synonym",
          "Fill acceptedNameUsage or acceptedNameUsageID.");
    }
    String source = line.cell("nameAccordingTo");
    return new HouseTaxon(
        line.name(),
        line.cell("scientificNameAuthorship"),
        line.cell("taxonRank").toLowerCase(Locale.ROOT),
        named(line, "parentNameUsage"),
        accepted,
        line.cell("vernacularName"),
        source.isEmpty() ? file : source);
  }

  /** What a term names, by its name or by the ID of a row; a name may carry its authority. */
  private Optional<TaxonName> named(Line line, String term) {
    String id = line.cell(term + "ID");
    if (!id.isEmpty()) {
      Optional<Line> there = Optional.ofNullable(byId.get(id));
      if (there.isEmpty()) {
        problems.cell(
            line.row(), term + "ID", id, "no row has this taxonID", "Give the row, or the name.");
      }
      return there.map(Line::name);
    }
    String name = line.cell(term);
    return name.isEmpty()
        ? Optional.empty()
        : Optional.of(
            byName.values().stream()
                .filter(l -> l.cell("scientificName").equals(name))
                .map(Line::name)
                .findFirst()
                .orElseGet(() -> new TaxonName(name)));
  }
}
