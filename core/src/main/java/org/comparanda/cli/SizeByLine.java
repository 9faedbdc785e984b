package org.comparanda.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.comparanda.exchange.json.SizeJson;
import org.comparanda.exchange.json.SizeReport;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.LineMethod;
import org.comparanda.sizeestimate.OneAnimal;
import org.comparanda.sizeestimate.SeveralBones;
import org.comparanda.sizeestimate.SizeDesk;
import org.comparanda.sizeestimate.SizeEstimate;
import org.comparanda.sizeestimate.SizeQuestion;
import org.comparanda.sizeestimate.SizesDisagree;
import org.comparanda.sizeestimate.UndecidedTaxon;
import org.comparanda.statistics.Outcome;
import org.comparanda.suggestion.Comparison;
import org.comparanda.taxon.TaxonName;

/** Fits a line on the shelf and estimates every bone by it. */
final class SizeByLine {
  /** Whose line holds for a bone. */
  enum Taxon {
    /** The taxa that the line was asked of. */
    AS_ASKED,
    /** Not decided: each candidate's own line, mixed by its share. */
    UNDECIDED
  }

  private final SizeTables tables;
  private final SizeDesk desk;
  private final SizeQuestion question;
  private final Taxon taxon;
  private final SizeReport report;

  private SizeByLine(SizeTables tables, SizeQuestion question, Taxon taxon, SizeReport report) {
    this.tables = tables;
    this.desk = tables.desk();
    this.question = question;
    this.taxon = taxon;
    this.report = report;
  }

  static SizeByLine of(SizeTables tables, LineArguments line, Taxon taxon) throws IOException {
    SizeQuestion question = line.question(tables.opened());
    SizeDesk desk = tables.desk();
    Optional<Outcome<SeveralBones>> several =
        question.from().size() > 1 && question.line() == LineMethod.OLS
            ? Optional.of(desk.severalBones(question))
            : Optional.empty();
    Outcome<FittedLine> fitted =
        several.isPresent() && OneAnimalBones.of(question.from()) == OneAnimalBones.BY_ANIMAL
            ? several.get().then(s -> line.corrected(s.best()))
            : line.fit(desk, question);
    return new SizeByLine(
        tables, question, taxon, new SizeReport(fitted, several, Optional.empty()));
  }

  /** With a report on whether the line can be trusted; takes about a second. */
  SizeByLine withChecks() {
    return new SizeByLine(
        tables,
        question,
        taxon,
        new SizeReport(
            report.line(), report.several(), Optional.of(report.line().then(FittedLine::checks))));
  }

  /** Errors: {@link CannotDo} where there is no line; the JSON then says why. */
  int write(Terminal terminal, Optional<Path> json) throws IOException {
    int code = json.isPresent() ? writeJson(terminal, json.get()) : writeText(terminal);
    if (report.line().value().isEmpty()) {
      throw CannotDo.because(report.line());
    }
    return code;
  }

  private int writeJson(Terminal terminal, Path out) throws IOException {
    int[] none = {0};
    JsonArgument.write(
        out,
        writer -> {
          try (SizeJson sizes = new SizeJson(writer, ProgramName.current(), report)) {
            none[0] = eachBone(sizes::write, sizes::write);
          }
        });
    terminal.say("Line and estimates: " + out);
    return none[0] == 0 ? Terminal.FINE : Terminal.PROBLEMS_FOUND;
  }

  private int writeText(Terminal terminal) throws IOException {
    if (report.line().value().isEmpty()) {
      return Terminal.NOT_DONE;
    }
    SizeText text = new SizeText(terminal, report.line().value().get());
    text.writeLine();
    report.several().ifPresent(text::write);
    report.checks().ifPresent(new LineChecksText(terminal, text.line())::write);
    return eachBone(text::write, text::write) == 0 ? Terminal.FINE : Terminal.PROBLEMS_FOUND;
  }

  /** Takes one estimate after the other. */
  private interface Taker {
    void take(String bone, Outcome<SizeEstimate> estimate, List<SizesDisagree> disagree)
        throws IOException;
  }

  /** Takes one mixture after the other. */
  private interface MixtureTaker {
    void take(String bone, UndecidedTaxon size, Map<TaxonName, Double> shares) throws IOException;
  }

  private int eachBone(Taker taker, MixtureTaker mixtures) throws IOException {
    if (taxon == Taxon.UNDECIDED && tables.inHand().isPresent()) {
      return eachUndecided(taker, mixtures);
    }
    OneAnimal oneAnimal = desk.oneAnimal(question.taxa());
    return tables.each(
        OneAnimalBones.of(question.from()),
        (id, of) -> {
          Outcome<SizeEstimate> estimate = report.line().then(l -> l.estimate(of));
          taker.take(id, estimate, of.size() > 1 ? oneAnimal.among(of) : List.of());
          return estimate;
        });
  }

  private int eachUndecided(Taker taker, MixtureTaker mixtures) throws IOException {
    TaxonShares shares =
        new TaxonShares(
            Comparison.of(
                tables.opened().shelf(),
                tables.inHand().orElseThrow().protocol(),
                tables.opened().tables().taxa(),
                tables.opened().rules().comparison()));
    return tables.each(
        OneAnimalBones.EACH_BONE,
        (id, of) -> {
          Outcome<Map<TaxonName, Double>> known = shares.of(of.get(0));
          if (known.value().isEmpty()) {
            taker.take(id, known.then(s -> Outcome.none("", "")), List.of());
            return known;
          }
          UndecidedTaxon size = desk.undecided(question, of.get(0), known.value().get());
          mixtures.take(id, size, known.value().get());
          return size.mixture();
        });
  }
}
