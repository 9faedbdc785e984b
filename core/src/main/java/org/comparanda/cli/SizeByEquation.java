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
import java.util.stream.Collectors;
import org.comparanda.reference.Shelf;
import org.comparanda.sizeestimate.EquationOnShelf;
import org.comparanda.sizeestimate.PublishedEquation;
import org.comparanda.sizeestimate.SizeDesk;
import org.comparanda.statistics.Outcome;
import org.comparanda.tables.BrokenTable;
import org.comparanda.tables.ReferenceTables;
import org.comparanda.taxon.TaxonName;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Which published equation is asked for, and how it does on the shelf. */
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

  PublishedEquation equation(ReferenceTables shipped) throws IOException {
    List<PublishedEquation> known = tables(shipped).equations();
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

  private ReferenceTables tables(ReferenceTables shipped) throws IOException {
    if (file == null) {
      return shipped;
    }
    try {
      return shipped.withEquations(
          String.valueOf(file.getFileName()), Files.readString(file, StandardCharsets.UTF_8));
    } catch (NoSuchFileException missing) {
      throw new CannotDo(
          "There is no file \"" + file + "\". Nothing was done. Check the name and the folder.");
    } catch (BrokenTable broken) {
      throw new CannotDo(String.valueOf(broken.getMessage()));
    }
  }

  /** On the shelf's animals of the equation's own taxon or group, or of the taxa asked for. */
  static Outcome<EquationOnShelf> onShelf(
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
      if (opened.tables().taxa().lineage(taxon).contains(equation.taxon())) {
        meant.add(taxon);
      }
    }
    return meant;
  }

  static Optional<Double> value(
      PublishedEquation equation, org.comparanda.reference.BoneInHand bone) {
    boolean same = bone.element().equals(equation.predictor().element());
    return same
        ? Optional.ofNullable(
            bone.values()
                .get(new org.comparanda.measurement.MeasurementCode(equation.predictor().code())))
        : Optional.empty();
  }
}
