package org.comparanda.tables;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.comparanda.measurement.Protocol;
import org.comparanda.sizeestimate.PublishedEquation;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;

/** Reads published size equations. A row without a citation or a known taxon is refused. */
final class EquationTable {
  private EquationTable() {}

  private enum Kind {
    FACTOR,
    LINE,
    POWER,
    LOG_LINE
  }

  /** Errors: {@link BrokenTable} naming file, row and field. */
  static List<PublishedEquation> read(TableFile file, Protocol protocol, TaxonTree taxa) {
    List<TableRow> rows = file.rows("equations");
    ProtocolTables.requireOnce(rows, "key");
    return rows.stream().map(row -> equation(row, protocol, taxa)).toList();
  }

  /** Rows whose keys must be new. Errors: {@link BrokenTable} naming file, row and field. */
  static List<PublishedEquation> readBeside(
      List<PublishedEquation> shipped, TableFile file, Protocol protocol, TaxonTree taxa) {
    for (TableRow row : file.rows("equations")) {
      if (shipped.stream().anyMatch(e -> e.key().equals(row.text("key")))) {
        throw row.broken(
            "key",
            "\"" + row.text("key") + "\" is the key of an equation that came with the program");
      }
    }
    return read(file, protocol, taxa);
  }

  private static PublishedEquation equation(TableRow row, Protocol protocol, TaxonTree taxa) {
    TaxonName taxon = new TaxonName(row.text("taxon"));
    if (taxa.taxon(taxon).isEmpty()) {
      throw row.broken("taxon", "\"" + taxon + "\" has no row in the taxon tree");
    }
    return new PublishedEquation(
        row.text("key"),
        row.text(row.said("name")),
        taxon,
        row.text(row.said("appliesTo")),
        row.text("predicts"),
        row.text("resultUnit"),
        new PublishedEquation.Predictor(
            ProtocolTables.knownElement(row, protocol),
            row.text("code"),
            row.text(row.said("predictor")),
            row.text("predictorUnit")),
        form(row),
        range(row),
        row.has("n") ? OptionalInt.of((int) row.number("n")) : OptionalInt.empty(),
        row.optionalNumber("standardError"),
        row.optionalNumber("rSquared"),
        row.text("citation"),
        row.text(row.said("howVerified")),
        row.truth("verified"),
        row.textOrEmpty(row.said("caution")),
        row.rows("worked").stream().map(EquationTable::worked).toList());
  }

  private static PublishedEquation.Form form(TableRow row) {
    double coefficient = row.number("coefficient");
    return switch (row.word("form", Kind.class)) {
      case FACTOR -> new PublishedEquation.Factor(coefficient);
      case LINE -> new PublishedEquation.Line(row.number("intercept"), coefficient);
      case POWER -> new PublishedEquation.Power(coefficient, row.number("exponent"));
      case LOG_LINE ->
          new PublishedEquation.LogLine(
              row.number("logBase"), row.number("intercept"), coefficient);
    };
  }

  private static Optional<PublishedEquation.ValidRange> range(TableRow row) {
    if (!row.has("validFrom") && !row.has("validTo")) {
      return Optional.empty();
    }
    return Optional.of(
        new PublishedEquation.ValidRange(row.number("validFrom"), row.number("validTo")));
  }

  private static PublishedEquation.Worked worked(TableRow row) {
    return new PublishedEquation.Worked(
        row.number("x"), row.number("y"), row.number("within"), row.text("source"));
  }
}
