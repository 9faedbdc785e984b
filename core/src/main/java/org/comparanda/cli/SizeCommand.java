package org.comparanda.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.comparanda.exchange.json.EquationJson;
import org.comparanda.exchange.json.SizeJson;
import org.comparanda.exchange.json.SizeReport;
import org.comparanda.exchange.table.BoneTable;
import org.comparanda.exchange.table.TableOptions;
import org.comparanda.exchange.table.TableRead;
import org.comparanda.exchange.table.TableReader;
import org.comparanda.reference.BoneInHand;
import org.comparanda.sizeestimate.EquationAnswer;
import org.comparanda.sizeestimate.EquationOnShelf;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.LineMethod;
import org.comparanda.sizeestimate.PublishedEquation;
import org.comparanda.sizeestimate.SeveralBones;
import org.comparanda.sizeestimate.SizeDesk;
import org.comparanda.sizeestimate.SizeEstimate;
import org.comparanda.sizeestimate.SizeQuestion;
import org.comparanda.sizeestimate.SizesDisagree;
import org.comparanda.sizeestimate.UndecidedTaxon;
import org.comparanda.statistics.Outcome;
import org.comparanda.suggestion.Comparison;
import org.comparanda.suggestion.ComparisonRules;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.TaxonName;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Fits a size line on the shelf, or takes a published equation, and estimates every bone by it. */
@Command(
    name = "size",
    description = {
      "Fit a size line on the shelf and estimate by it: body length, body mass or another"
          + " measurement, with its prediction interval. Or estimate by a published equation.",
      "Measurements of several elements are written humerus.GL; bones that share an animal are then"
          + " taken together."
    },
    mixinStandardHelpOptions = true)
final class SizeCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private ShelfArguments shelf = new ShelfArguments();
  @Mixin private TableArguments tables = new TableArguments();
  @Mixin private JsonArgument json = new JsonArgument();
  @Mixin private LineArguments line = new LineArguments();
  @Mixin private SizeByEquation equations = new SizeByEquation();

  @Option(
      names = "--bones",
      paramLabel = "BONES",
      description = "Table of the bones to be estimated.")
  private @Nullable Path bones;

  @Option(
      names = "--diagnostics",
      description =
          "Tell whether the line can be trusted: leverage, Cook's distance, PRESS, normality, equal"
              + " spread, taxa left out, held-out coverage.")
  private boolean diagnostics;

  @Option(
      names = "--undecided",
      description =
          "The taxon of the bones is not decided: compare each with the shelf (by --from and"
              + " --only) and mix the candidates' own lines by their shares.")
  private boolean undecided;

  SizeCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    return equations.asked() ? byEquation() : byLine();
  }

  private int byLine() throws IOException {
    SizeQuestion question = line.question();
    TableOptions options = options(line.named());
    ShelfArguments.Opened opened = shelf.open(terminal, options);
    Optional<TableRead<BoneTable>> inHand = inHand(opened, options);
    SizeDesk desk = SizeDesk.of(opened.shelf(), opened.protocol());
    SizeReport report = report(desk, question);
    int code =
        json.file().isPresent()
            ? writeJson(report, opened, desk, inHand)
            : writeText(report, opened, desk, inHand);
    if (report.line().value().isEmpty()) {
      throw CannotDo.because(report.line());
    }
    return code;
  }

  private SizeReport report(SizeDesk desk, SizeQuestion question) throws IOException {
    Optional<Outcome<SeveralBones>> several =
        question.from().size() > 1 && question.line() == LineMethod.OLS
            ? Optional.of(desk.severalBones(question))
            : Optional.empty();
    Outcome<FittedLine> fitted =
        several.isPresent() && OneAnimalBones.of(question.from()) == OneAnimalBones.BY_ANIMAL
            ? several.get().then(s -> line.corrected(s.best()))
            : line.fit(desk, question);
    return new SizeReport(
        fitted,
        several,
        diagnostics ? Optional.of(fitted.then(FittedLine::checks)) : Optional.empty());
  }

  /** Only what the question names is read, and what {@code --only} adds. */
  private TableOptions options(Set<String> names) {
    Set<String> named = new LinkedHashSet<>(names);
    named.addAll(tables.only());
    return tables
        .options()
        .withOnly(List.copyOf(named))
        .withTaxa(undecided ? TableOptions.Taxa.NEEDED : TableOptions.Taxa.OPTIONAL)
        .withNumbers(line.numbers());
  }

  private Optional<TableRead<BoneTable>> inHand(
      ShelfArguments.Opened opened, TableOptions options) {
    Optional<TableRead<BoneTable>> inHand =
        Optional.ofNullable(bones).map(table -> bones(opened, options, table));
    inHand.ifPresentOrElse(
        read -> tables.everyMappingFound(opened.factsAnd(read.facts())),
        () -> opened.facts().ifPresent(f -> tables.everyMappingFound(List.of(f))));
    return inHand;
  }

  private TableRead<BoneTable> bones(
      ShelfArguments.Opened opened, TableOptions options, Path table) {
    return TableReader.of(opened.tables().protocol(), opened.tables().taxa(), options)
        .watchedBy(new ProgressLine(terminal, table))
        .bones(opened.shelf(), table)
        .fold(
            r -> {
              terminal.note(r.facts().sentence());
              return r;
            },
            report -> {
              throw new CannotDo(report.lines());
            });
  }

  private int byEquation() throws IOException {
    PublishedEquation equation = equations.equation(ReferenceTables.shipped());
    TableOptions options = options(Set.of(equation.predictor().name()));
    ShelfArguments.Opened opened = shelf.open(terminal, options);
    Optional<TableRead<BoneTable>> inHand = inHand(opened, options);
    Outcome<EquationOnShelf> onShelf = SizeByEquation.onShelf(opened, equation, line.taxa());
    int[] none = {0};
    if (json.file().isPresent()) {
      JsonArgument.write(
          json.file().get(),
          writer -> {
            try (EquationJson out =
                new EquationJson(writer, ProgramName.current(), equation, Optional.of(onShelf))) {
              none[0] = eachByEquation(equation, inHand, out::write);
            }
          });
      terminal.say("Equation and estimates: " + json.file().get());
    } else {
      EquationText text = new EquationText(terminal);
      text.write(equation, onShelf);
      none[0] = eachByEquation(equation, inHand, text::write);
    }
    return none[0] == 0 ? Terminal.FINE : Terminal.PROBLEMS_FOUND;
  }

  /** Takes one value of an equation after the other. */
  private interface EquationTaker {
    void take(String bone, Outcome<EquationAnswer> answer) throws IOException;
  }

  private int eachByEquation(
      PublishedEquation equation, Optional<TableRead<BoneTable>> inHand, EquationTaker taker)
      throws IOException {
    return each(
        inHand,
        OneAnimalBones.EACH_BONE,
        (id, of) -> {
          Outcome<EquationAnswer> answer =
              SizeByEquation.value(equation, of.get(0))
                  .map(mm -> EquationAnswer.of(equation, mm, line.level()))
                  .orElseGet(
                      () ->
                          Outcome.none(
                              "The bone has no " + equation.predictor().name() + ".",
                              "Measure it, or choose another equation."));
          taker.take(id, answer);
          return answer;
        });
  }

  private int writeJson(
      SizeReport report,
      ShelfArguments.Opened opened,
      SizeDesk desk,
      Optional<TableRead<BoneTable>> inHand)
      throws IOException {
    Path out = json.file().orElseThrow();
    int[] none = {0};
    JsonArgument.write(
        out,
        writer -> {
          try (SizeJson sizes = new SizeJson(writer, ProgramName.current(), report)) {
            none[0] = eachBone(report, opened, desk, inHand, sizes::write, sizes::write);
          }
        });
    terminal.say("Line and estimates: " + out);
    return none[0] == 0 ? Terminal.FINE : Terminal.PROBLEMS_FOUND;
  }

  private int writeText(
      SizeReport report,
      ShelfArguments.Opened opened,
      SizeDesk desk,
      Optional<TableRead<BoneTable>> inHand)
      throws IOException {
    if (report.line().value().isEmpty()) {
      return Terminal.NOT_DONE;
    }
    SizeText text = new SizeText(terminal, report.line().value().get());
    text.writeLine();
    report.several().ifPresent(text::write);
    report.checks().ifPresent(new LineChecksText(terminal, text.line())::write);
    return eachBone(report, opened, desk, inHand, text::write, text::write) == 0
        ? Terminal.FINE
        : Terminal.PROBLEMS_FOUND;
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

  /** How many bones could not be estimated. */
  private int eachBone(
      SizeReport report,
      ShelfArguments.Opened opened,
      SizeDesk desk,
      Optional<TableRead<BoneTable>> inHand,
      Taker taker,
      MixtureTaker mixtures)
      throws IOException {
    SizeQuestion question = line.question();
    if (undecided && inHand.isPresent()) {
      TaxonShares shares =
          new TaxonShares(
              Comparison.of(
                  opened.shelf(),
                  inHand.get().protocol(),
                  opened.tables().taxa(),
                  ComparisonRules.withDefaults()));
      return each(
          inHand,
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
    return each(
        inHand,
        OneAnimalBones.of(question.from()),
        (id, of) -> {
          Outcome<SizeEstimate> estimate = report.line().then(l -> l.estimate(of));
          taker.take(
              id, estimate, of.size() > 1 ? desk.notOneAnimal(of, question.taxa()) : List.of());
          return estimate;
        });
  }

  /** Estimates what is of one animal, and hands it on. */
  private interface Estimating {
    Outcome<?> answer(String id, List<BoneInHand> bones) throws IOException;
  }

  private int each(
      Optional<TableRead<BoneTable>> inHand, OneAnimalBones together, Estimating estimating)
      throws IOException {
    if (inHand.isEmpty()) {
      return 0;
    }
    RowCounter counter = new RowCounter(terminal, inHand.get().facts().rows());
    int[] none = {0};
    try {
      together.forEach(
          inHand.get().content(),
          (id, of) -> {
            try {
              none[0] += estimating.answer(id, of).value().isEmpty() ? 1 : 0;
            } catch (IOException problem) {
              throw new UncheckedIOException(problem);
            }
            counter.oneMore();
          });
    } catch (UncheckedIOException problem) {
      throw problem.getCause();
    }
    return none[0];
  }
}
