package org.comparanda.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.comparanda.exchange.json.EquationJson;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.BoneInHand;
import org.comparanda.reference.Shelf;
import org.comparanda.sizeestimate.EquationAnswer;
import org.comparanda.sizeestimate.EquationOnShelf;
import org.comparanda.sizeestimate.PublishedEquation;
import org.comparanda.sizeestimate.SizeDesk;
import org.comparanda.statistics.Outcome;
import org.comparanda.tables.BrokenTable;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Which published equation is asked for; its values for bones, and how it does on the shelf. */
final class SizeByEquation {
  @Option(
      names = "--equation",
      paramLabel = "KEY",
      description =
          "Estimate by a published equation instead of a line, and compare it with the shelf.")
  private @Nullable String key;

  @Option(
      names = "--equations",
      paramLabel = "FILE",
      description =
          "Equations of your own (JSON as reference-tables/equations.json), citation required.")
  private @Nullable Path file;

  boolean asked() {
    return key != null;
  }

  /** Evaluates the equation for every bone and tries it on the shelf. */
  int run(
      ReferenceTables words,
      Function<Set<String>, SizeTables> read,
      LineArguments line,
      Optional<Path> json,
      Terminal terminal)
      throws IOException {
    PublishedEquation equation = equation(words);
    SizeTables tables = read.apply(Set.of(equation.predictor().name()));
    Outcome<EquationOnShelf> onShelf =
        onShelf(tables.opened(), equation, line.taxa(tables.opened()));
    TaxonTree taxa = tables.opened().tables().taxa();
    taxa.standsUnder(equation.taxon()).ifPresent(terminal::note);
    line.olderNames(taxa).forEach(terminal::note);
    int[] none = {0};
    if (json.isPresent()) {
      JsonArgument.write(
          json.get(),
          writer -> {
            try (EquationJson out =
                new EquationJson(writer, ProgramName.current(), equation, Optional.of(onShelf))) {
              none[0] = each(equation, tables, line.level(), out::write);
            }
          });
      terminal.say("Equation and estimates: " + json.get());
    } else {
      EquationText text = new EquationText(terminal);
      text.write(equation, onShelf);
      none[0] = each(equation, tables, line.level(), text::write);
    }
    return none[0] == 0 ? Terminal.FINE : Terminal.PROBLEMS_FOUND;
  }

  /** Takes one value of an equation after the other. */
  private interface Taker {
    void take(String bone, Outcome<EquationAnswer> answer) throws IOException;
  }

  private static int each(PublishedEquation equation, SizeTables tables, double level, Taker taker)
      throws IOException {
    return tables.each(
        OneAnimalBones.EACH_BONE,
        (id, of) -> {
          Outcome<EquationAnswer> answer =
              value(equation, of.get(0))
                  .map(mm -> EquationAnswer.of(equation, mm, level))
                  .orElseGet(
                      () ->
                          Outcome.none(
                              "The bone has no " + equation.predictor().name() + ".",
                              "Measure it, or choose another equation."));
          taker.take(id, answer);
          return answer;
        });
  }

  private PublishedEquation equation(ReferenceTables words) throws IOException {
    List<PublishedEquation> known = tables(words).equations();
    return known.stream()
        .filter(e -> e.key().equals(key))
        .findFirst()
        .orElseThrow(
            () ->
                new CannotDo(
                    "No equation has the key \""
                        + key
                        + "\". Nothing was done. Known: "
                        + known.stream()
                            .map(PublishedEquation::key)
                            .collect(Collectors.joining(", "))
                        + ". Bring your own by --equations FILE."));
  }

  private ReferenceTables tables(ReferenceTables words) throws IOException {
    if (file == null) {
      return words;
    }
    try {
      return words.withEquations(
          String.valueOf(file.getFileName()), Files.readString(file, StandardCharsets.UTF_8));
    } catch (NoSuchFileException missing) {
      throw new CannotDo(
          "There is no file \"" + file + "\". Nothing was done. Check the name and the folder.");
    } catch (BrokenTable broken) {
      throw new CannotDo(String.valueOf(broken.getMessage()));
    }
  }

  /** On the shelf's animals of the equation's own taxon or group, or of the taxa asked for. */
  private static Outcome<EquationOnShelf> onShelf(
      ShelfArguments.Opened opened, PublishedEquation equation, Set<TaxonName> asked) {
    Set<TaxonName> taxa = asked.isEmpty() ? meant(opened, equation) : asked;
    Shelf shelf = opened.shelf();
    if (taxa.isEmpty()) {
      return Outcome.none(
          "No animal on the shelf is of " + equation.taxon() + ".",
          "Say by --taxa which animals it is to be tried on.");
    }
    return SizeDesk.of(shelf, opened.protocol()).compare(equation, taxa);
  }

  private static Set<TaxonName> meant(ShelfArguments.Opened opened, PublishedEquation equation) {
    Set<TaxonName> meant = new HashSet<>();
    for (TaxonName taxon : opened.shelf().taxa()) {
      if (opened.tables().taxa().within(taxon, equation.taxon())) {
        meant.add(taxon);
      }
    }
    return meant;
  }

  private static Optional<Double> value(PublishedEquation equation, BoneInHand bone) {
    boolean same = bone.element().equals(equation.predictor().element());
    return same
        ? Optional.ofNullable(bone.values().get(new MeasurementCode(equation.predictor().code())))
        : Optional.empty();
  }
}
