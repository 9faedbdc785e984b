package org.comparanda.cli;

import static java.util.stream.Collectors.joining;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.comparanda.exchange.table.TableOptions;
import org.comparanda.sizeestimate.Correction;
import org.comparanda.sizeestimate.FittedLine;
import org.comparanda.sizeestimate.LineMethod;
import org.comparanda.sizeestimate.LineScale;
import org.comparanda.sizeestimate.LineTree;
import org.comparanda.sizeestimate.SizeDesk;
import org.comparanda.sizeestimate.SizeQuestion;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.phylo.Newick;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Which size line is asked for. */
final class LineArguments {
  @Option(
      names = "--predict",
      paramLabel = "Y",
      description = "What is wanted: body_length, body_mass or a measurement.")
  private String predict = "";

  @Option(
      names = "--from",
      split = ",",
      paramLabel = "A",
      description = "The measurement, or several, that it is estimated from.")
  private List<String> from = new ArrayList<>();

  @Option(
      names = "--taxa",
      split = ",",
      paramLabel = "X",
      description = "Taxa or groups that feed the line; all when not given.")
  private List<String> taxa = new ArrayList<>();

  @Option(
      names = "--line",
      defaultValue = "ols",
      paramLabel = "LINE",
      description =
          "ols (default, to predict), inverse (fitted the other way round, Fieller's limits), sma or"
              + " ma (how sizes scale), pgls (on a tree).")
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
      names = "--lambda",
      paramLabel = "LAMBDA",
      description = "λ of --line pgls, 0 to 1; by maximum likelihood when not given.")
  private @Nullable Double lambda;

  @Option(
      names = "--level",
      defaultValue = "0.95",
      paramLabel = "LEVEL",
      description = "Level of the intervals, 0.95 when not given.")
  private double level = 0.95;

  @Option(
      names = "--correction",
      defaultValue = "naive",
      paramLabel = "CORRECTION",
      description =
          "naive (default, the median), lognormal, smearing or ratio: moves the estimate, not its"
              + " limits.")
  private Correction correction = Correction.NAIVE;

  /** What is asked; groups stand for their taxa on the shelf. */
  SizeQuestion question(ShelfArguments.Opened shelf) {
    if (predict.isEmpty() || from.isEmpty()) {
      throw new CannotDo(
          "Say what is wanted by --predict Y and from what by --from A, or name a published"
              + " equation by --equation KEY. Nothing was done.");
    }
    return new SizeQuestion(predict, from, taxa(shelf), line, scale, level());
  }

  /** The shelf's taxa that were asked for by their names or by a group; empty when none was. */
  Set<TaxonName> taxa(ShelfArguments.Opened shelf) {
    Set<TaxonName> meant = new LinkedHashSet<>();
    for (String asked : taxa) {
      TaxonName name = new TaxonName(asked.strip());
      List<TaxonName> here =
          shelf.shelf().taxa().stream().filter(t -> shelf.tables().taxa().within(t, name)).toList();
      if (here.isEmpty()) {
        throw new CannotDo(
            "--taxa \""
                + name.value()
                + "\": no animal on the shelf is of it. The shelf holds "
                + shelf.shelf().taxa().stream().map(TaxonName::value).collect(joining(", "))
                + ". Name one of these, or a group that holds them. Nothing was done.");
      }
      meant.addAll(here);
    }
    return meant;
  }

  /** What to say of the taxa that were asked for under names no longer used. */
  List<String> olderNames(TaxonTree tree) {
    return taxa.stream()
        .flatMap(asked -> tree.standsUnder(new TaxonName(asked.strip())).stream())
        .toList();
  }

  double level() {
    if (!(level > 0 && level < 1)) {
      throw new CannotDo("--level " + level + " lies not between 0 and 1. Nothing was done.");
    }
    return level;
  }

  /** The measurements named, so that nothing else need be read. */
  Set<String> named() {
    Set<String> named = new LinkedHashSet<>(from);
    named.add(predict);
    return named;
  }

  TableOptions.Numbers numbers() {
    return scale == LineScale.RAW ? TableOptions.Numbers.ANY_SIGN : TableOptions.Numbers.ABOVE_ZERO;
  }

  Outcome<FittedLine> fit(SizeDesk desk, SizeQuestion question) throws IOException {
    if (lambda != null && !(lambda >= 0 && lambda <= 1)) {
      throw new CannotDo("--lambda " + lambda + " lies not between 0 and 1. Nothing was done.");
    }
    return (tree == null
            ? desk.line(question)
            : Newick.read(text(tree)).then(t -> desk.line(question, with(t))))
        .then(this::corrected);
  }

  /** A correction that the line doesn't have is told, not dropped. */
  Outcome<FittedLine> corrected(FittedLine fitted) {
    return correction == Correction.NAIVE
        ? Outcome.of(fitted)
        : fitted.corrections().then(c -> Outcome.of(fitted.withCorrection(correction)));
  }

  private LineTree with(org.comparanda.statistics.phylo.PhyloTree read) {
    LineTree on = LineTree.of(read);
    return lambda == null ? on : on.withLambda(lambda);
  }

  private static String text(Path tree) throws IOException {
    try {
      return Files.readString(tree, StandardCharsets.UTF_8);
    } catch (NoSuchFileException missing) {
      throw new CannotDo(
          "There is no tree \"" + tree + "\". Nothing was done. Check the name and the folder.");
    } catch (java.nio.charset.CharacterCodingException binary) {
      throw new CannotDo(
          "\"" + tree + "\" is no text. Nothing was done. Save the tree in Newick notation.");
    }
  }
}
