package org.comparanda.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.comparanda.exchange.json.SizeJson;
import org.comparanda.exchange.table.BoneTable;
import org.comparanda.exchange.table.TableOptions;
import org.comparanda.exchange.table.TableRead;
import org.comparanda.exchange.table.TableReader;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.LineMethod;
import org.comparanda.sizeestimate.LineScale;
import org.comparanda.sizeestimate.SizeDesk;
import org.comparanda.sizeestimate.SizeEstimate;
import org.comparanda.sizeestimate.SizeQuestion;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.phylo.Newick;
import org.comparanda.taxon.TaxonName;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Fits a size line on the shelf and estimates every bone of a table by it. */
@Command(
    name = "size",
    description = {
      "Fit a size line on the shelf and estimate by it: body length, body mass or another"
          + " measurement, with its prediction interval.",
      "Measurements of several elements are written humerus.GL."
    },
    mixinStandardHelpOptions = true)
final class SizeCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Mixin private ShelfArguments shelf = new ShelfArguments();
  @Mixin private TableArguments tables = new TableArguments();
  @Mixin private JsonArgument json = new JsonArgument();

  @Option(
      names = "--predict",
      required = true,
      paramLabel = "Y",
      description = "What is wanted: body_length, body_mass or a measurement.")
  private String predict = "";

  @Option(
      names = "--from",
      required = true,
      split = ",",
      paramLabel = "A",
      description = "The measurement, or several, that it is estimated from.")
  private List<String> from = new ArrayList<>();

  @Option(
      names = "--taxa",
      split = ",",
      paramLabel = "X",
      description = "Taxa that feed the line; all when not given.")
  private List<String> taxa = new ArrayList<>();

  @Option(
      names = "--line",
      defaultValue = "ols",
      paramLabel = "LINE",
      description = "ols (default, to predict), sma or ma (how sizes scale), pgls (on a tree).")
  private LineMethod line = LineMethod.OLS;

  @Option(
      names = "--scale",
      defaultValue = "log10",
      paramLabel = "SCALE",
      description = "log10 (default), ln or raw.")
  private LineScale scale = LineScale.LOG10;

  @Option(
      names = "--tree",
      paramLabel = "NEWICK",
      description = "Tree with branch lengths, for --line pgls.")
  private @Nullable Path tree;

  @Option(
      names = "--bones",
      paramLabel = "BONES",
      description = "Table of the bones to be estimated.")
  private @Nullable Path bones;

  @Option(
      names = "--level",
      defaultValue = "0.95",
      paramLabel = "LEVEL",
      description = "Level of the intervals, 0.95 when not given.")
  private double level = 0.95;

  SizeCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    if (!(level > 0 && level < 1)) {
      throw new CannotDo("--level " + level + " lies not between 0 and 1. Nothing was done.");
    }
    SizeQuestion question =
        new SizeQuestion(
            predict,
            from,
            Set.copyOf(taxa.stream().map(String::strip).map(TaxonName::new).toList()),
            line,
            scale,
            level);
    TableOptions options = options();
    ShelfArguments.Opened opened = shelf.open(terminal, options);
    Optional<TableRead<BoneTable>> inHand =
        Optional.ofNullable(bones).map(table -> bones(opened, options, table));
    inHand.ifPresentOrElse(
        read -> tables.everyMappingFound(opened.factsAnd(read.facts())),
        () -> opened.facts().ifPresent(f -> tables.everyMappingFound(List.of(f))));
    Outcome<FittedLine> fitted = fit(SizeDesk.of(opened.shelf(), opened.protocol()), question);
    int code = json.file().isPresent() ? writeJson(fitted, inHand) : writeText(fitted, inHand);
    if (fitted.value().isEmpty()) {
      throw CannotDo.because(fitted);
    }
    return code;
  }

  /** Only what the question names is read. */
  private TableOptions options() {
    Set<String> named = new LinkedHashSet<>();
    named.add(codeOf(predict));
    from.forEach(name -> named.add(codeOf(name)));
    return tables
        .options()
        .withOnly(List.copyOf(named))
        .withTaxa(TableOptions.Taxa.OPTIONAL)
        .withNumbers(
            scale == LineScale.RAW
                ? TableOptions.Numbers.ANY_SIGN
                : TableOptions.Numbers.ABOVE_ZERO);
  }

  private static String codeOf(String name) {
    return name.substring(name.indexOf('.') + 1);
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

  private Outcome<FittedLine> fit(SizeDesk desk, SizeQuestion question) throws IOException {
    if (tree == null) {
      return desk.line(question);
    }
    return Newick.read(Files.readString(tree)).then(t -> desk.line(question, t));
  }

  private int writeJson(Outcome<FittedLine> fitted, Optional<TableRead<BoneTable>> inHand)
      throws IOException {
    Path out = json.file().orElseThrow();
    int[] notEstimable = {0};
    JsonArgument.write(
        out,
        writer -> {
          try (SizeJson sizes = new SizeJson(writer, ProgramName.current(), fitted)) {
            notEstimable[0] = eachBone(fitted, inHand, sizes::write);
          }
        });
    terminal.say("Line and estimates: " + out);
    return notEstimable[0] == 0 ? Terminal.FINE : Terminal.PROBLEMS_FOUND;
  }

  private int writeText(Outcome<FittedLine> fitted, Optional<TableRead<BoneTable>> inHand)
      throws IOException {
    if (fitted.value().isEmpty()) {
      return Terminal.NOT_DONE;
    }
    SizeText text = new SizeText(terminal, fitted.value().get());
    text.writeLine();
    return eachBone(fitted, inHand, text::write) == 0 ? Terminal.FINE : Terminal.PROBLEMS_FOUND;
  }

  /** Takes one estimate after the other. */
  private interface Taker {
    void take(String bone, Outcome<SizeEstimate> estimate) throws IOException;
  }

  /** How many bones could not be estimated. */
  private int eachBone(
      Outcome<FittedLine> fitted, Optional<TableRead<BoneTable>> inHand, Taker taker)
      throws IOException {
    if (inHand.isEmpty()) {
      return 0;
    }
    RowCounter counter = new RowCounter(terminal, inHand.get().facts().rows());
    int[] none = {0};
    try {
      inHand
          .get()
          .content()
          .forEach(
              bone -> {
                Outcome<SizeEstimate> estimate = fitted.then(l -> l.estimate(bone));
                if (estimate.value().isEmpty()) {
                  none[0]++;
                }
                try {
                  taker.take(bone.id(), estimate);
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
