package org.comparanda.tables;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.comparanda.bone.Element;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.ElementNames;
import org.comparanda.bone.GrowingEnd;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Symmetry;
import org.comparanda.measurement.How;
import org.comparanda.measurement.LengthUnit;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.PartRule;
import org.comparanda.measurement.Protocol;

/** Reads elements and measurements into a protocol whose links all resolve. */
final class ProtocolTables {
  private ProtocolTables() {}

  /** Errors: {@link BrokenTable} naming file, row and field. */
  static Protocol read(TableFile elementFile, TableFile measurementFile) {
    List<TableRow> elementRows = elementFile.rows("elements");
    requireOnce(elementRows, "key");
    List<Element> elements = elementRows.stream().map(ProtocolTables::element).toList();
    Protocol known = new Protocol(elements, List.of(), List.of());

    Set<String> seen = new HashSet<>();
    List<Measurement> measurements =
        measurementFile.rows("measurements").stream()
            .map(
                row -> {
                  Measurement m = measurement(row, known);
                  if (!seen.add(m.element() + "." + m.code())) {
                    throw row.broken("code", "\"" + m.code() + "\" stands twice");
                  }
                  return m;
                })
            .toList();
    Protocol measured = new Protocol(elements, measurements, List.of());
    List<PartRule> rules =
        measurementFile.rows("partRules").stream().map(row -> partRule(row, measured)).toList();
    return new Protocol(elements, measurements, rules);
  }

  static void requireOnce(List<TableRow> rows, String field) {
    Set<String> seen = new HashSet<>();
    for (TableRow row : rows) {
      if (!seen.add(row.text(field))) {
        throw row.broken(field, "\"" + row.text(field) + "\" stands twice");
      }
    }
  }

  static ElementKey knownElement(TableRow row, Protocol protocol) {
    ElementKey key = new ElementKey(row.text("element"));
    if (protocol.element(key).isEmpty()) {
      throw row.broken("element", "\"" + key + "\" is no element of the protocol");
    }
    return key;
  }

  private static Element element(TableRow row) {
    ElementKey key = new ElementKey(row.text("key"));
    return new Element(
        key,
        ElementNames.in(row.language()).of(key, row.text("name")),
        row.text("region"),
        row.word("symmetry", Symmetry.class),
        row.counts("perSkeleton"),
        row.words("growingEnds", GrowingEnd.class),
        row.textOrEmpty("ontologyId"),
        row.text("source"));
  }

  private static Measurement measurement(TableRow row, Protocol protocol) {
    ElementKey element = knownElement(row, protocol);
    if (!row.text("unit").equals(LengthUnit.MILLIMETRE.symbol())) {
      throw row.broken("unit", "The protocol keeps lengths in mm, got " + row.text("unit"));
    }
    return new Measurement(
        element,
        new MeasurementCode(row.text("code")),
        row.text(row.said("name")),
        row.text(row.said("definition")),
        row.texts(row.said("mistakes")),
        landmarks(row),
        row.words("needs", Portion.class),
        plausible(row),
        positive(row, "tolerance"),
        positive(row, "cost"),
        row.word("how", How.class),
        row.text("source"));
  }

  private static Optional<Measurement.Landmarks> landmarks(TableRow row) {
    if (!row.has("landmarks")) {
      return Optional.empty();
    }
    List<Double> xy = row.numbers("landmarks", 4);
    return Optional.of(new Measurement.Landmarks(xy.get(0), xy.get(1), xy.get(2), xy.get(3)));
  }

  private static Optional<Measurement.Range> plausible(TableRow row) {
    if (!row.has("plausible")) {
      return Optional.empty();
    }
    List<Double> range = row.numbers("plausible", 2);
    if (!(range.get(0) > 0 && range.get(0) < range.get(1))) {
      throw row.broken("plausible", "The range must run upwards from above zero, got " + range);
    }
    return Optional.of(new Measurement.Range(range.get(0), range.get(1)));
  }

  private static double positive(TableRow row, String field) {
    double value = row.number(field);
    if (!(value > 0)) {
      throw row.broken(field, "A number above zero is needed, got " + value);
    }
    return value;
  }

  private static PartRule partRule(TableRow row, Protocol protocol) {
    ElementKey element = knownElement(row, protocol);
    row.text("source");
    return new PartRule(
        element,
        knownCode(row, "part", element, protocol),
        knownCode(row, "whole", element, protocol));
  }

  private static MeasurementCode knownCode(
      TableRow row, String field, ElementKey element, Protocol protocol) {
    MeasurementCode code = new MeasurementCode(row.text(field));
    if (protocol.measurement(element, code).isEmpty()) {
      throw row.broken(field, "\"" + code + "\" is no measurement of " + element);
    }
    return code;
  }
}
