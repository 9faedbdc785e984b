package org.comparanda.exchange.table;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.bone.Element;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.bone.Symmetry;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Protocol;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.Shelf;
import org.comparanda.reference.ShelfBone;
import org.comparanda.reference.Source;
import org.comparanda.taxon.Growth;
import org.comparanda.taxon.Taxon;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;

/** A small invented protocol, and files to read with it. */
final class TableFixture {
  static final MeasurementCode GL = new MeasurementCode("GL");
  static final MeasurementCode BD = new MeasurementCode("Bd");
  static final ElementKey HUMERUS = new ElementKey("humerus");
  static final Protocol PROTOCOL =
      new Protocol(
          List.of(
              element("humerus", Symmetry.SIDED),
              element("femur", Symmetry.SIDED),
              element("carapace", Symmetry.AXIAL)),
          List.of(
              measurement("humerus", "GL", 60, 400),
              measurement("humerus", "Bd", 10, 90),
              measurement("femur", "GL", 70, 450),
              measurement("carapace", "SCL", 40, 2300)),
          List.of());
  static final TaxonTree TREE =
      new TaxonTree(List.of(taxon("Ovis aries"), taxon("Capra hircus")), List.of());

  private final Path folder;

  TableFixture(Path folder) {
    this.folder = folder;
  }

  /** The rows of a table as its text. */
  static String lines(String... rows) {
    return String.join("\n", rows) + "\n";
  }

  Path file(String text) {
    return file(text.getBytes(StandardCharsets.UTF_8));
  }

  Path file(byte[] bytes) {
    try {
      return Files.write(folder.resolve("bones.csv"), bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static TableReader reader(TableOptions options) {
    return TableReader.of(PROTOCOL, TREE, options);
  }

  Shelf shelf(TableOptions options, String text) {
    return reader(options)
        .shelf(file(text))
        .fold(
            TableRead::content,
            report -> {
              throw wrong(report.lines());
            });
  }

  ProblemReport refused(TableOptions options, String text) {
    return refused(options, file(text));
  }

  ProblemReport refused(TableOptions options, Path table) {
    return reader(options)
        .shelf(table)
        .fold(
            read -> {
              throw wrong(List.of("was read: " + read.content()));
            },
            report -> report);
  }

  /** A shelf of six animals whose humerus GL runs from 120 to 145 mm. */
  static Shelf sixAnimals() {
    return new Shelf(List.of(animal(1), animal(2), animal(3), animal(4), animal(5), animal(6)));
  }

  private static Animal animal(int i) {
    return new Animal(
        new AnimalId("KV-" + i),
        Optional.of(new TaxonName("Ovis aries")),
        Source.OWN_DRAWER,
        Optional.of("3"),
        "",
        "",
        "",
        Optional.empty(),
        Optional.empty(),
        Set.of(),
        "",
        List.of(
            new ShelfBone(HUMERUS, Side.LEFT, Portion.WHOLE, Set.of(), Map.of(GL, 115.0 + 5 * i))));
  }

  private static AssertionError wrong(List<String> lines) {
    return new AssertionError(String.join("\n", lines));
  }

  private static Element element(String key, Symmetry symmetry) {
    return new Element(
        new ElementKey(key), key, "limb", symmetry, Map.of(), List.of(), "", "invented");
  }

  private static Measurement measurement(String element, String code, double low, double high) {
    return new Measurement(
        new ElementKey(element),
        new MeasurementCode(code),
        code,
        "invented",
        List.of(),
        Optional.empty(),
        List.of(Portion.WHOLE),
        Optional.of(new Measurement.Range(low, high)),
        0.01,
        1,
        "invented");
  }

  private static Taxon taxon(String name) {
    return new Taxon(
        new TaxonName(name),
        "",
        "",
        "species",
        Optional.empty(),
        Growth.DETERMINATE,
        false,
        "invented");
  }
}
