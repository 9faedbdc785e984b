package org.comparanda.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.MeasurementCode;

/**
 * A value stands under an element or a code that the protocol lacks. A table that names no element
 * says nothing wrong.
 */
record UnknownCode() implements ShelfCheck {
  /** A value's place in the protocol. */
  private record Place(ElementKey element, MeasurementCode code) {}

  @Override
  public FindingKind kind() {
    return FindingKind.UNKNOWN_CODE;
  }

  @Override
  public List<Finding> check(ShelfEntries entries) {
    List<Finding> findings = new ArrayList<>();
    ShelfEntries.grouped(
            entries.all().stream()
                .filter(r -> entries.protocol().element(r.element()).isEmpty())
                .filter(r -> !r.element().equals(ElementKey.UNNAMED))
                .toList(),
            BoneEntry::element)
        .forEach((element, rows) -> findings.add(unknownElement(element, rows)));
    Map<Place, List<BoneEntry>> unknown = new java.util.LinkedHashMap<>();
    for (BoneEntry row : entries.all()) {
      for (MeasurementCode code : row.values().keySet()) {
        if (entries.protocol().element(row.element()).isPresent()
            && entries.protocol().measurement(row.element(), code).isEmpty()) {
          unknown.computeIfAbsent(new Place(row.element(), code), p -> new ArrayList<>()).add(row);
        }
      }
    }
    unknown.forEach((place, rows) -> findings.add(unknownCode(place, rows)));
    return findings;
  }

  private Finding unknownElement(ElementKey element, List<BoneEntry> rows) {
    String message = "\"%s\" is no element of the protocol (%s).".formatted(element, rows(rows));
    String remedy = "Correct the word, or register the element.";
    return rows.size() == 1
        ? Finding.ofAnimal(
            kind(),
            rows.get(0).animal(),
            rows.get(0).bone(),
            "element",
            element.value(),
            message,
            remedy)
        : Finding.ofColumn(kind(), "element", element.value(), message, remedy);
  }

  private Finding unknownCode(Place place, List<BoneEntry> rows) {
    String message =
        "%s is no measurement of the %s in the protocol (%s)."
            .formatted(place.code(), place.element(), rows(rows));
    String remedy = "Move the value to its own column, or register the measurement.";
    return rows.size() == 1
        ? Finding.ofValue(
            kind(),
            rows.get(0),
            place.code().value(),
            rows.get(0).value(place.code()),
            message,
            remedy)
        : Finding.ofColumn(kind(), place.code().value(), place.element().value(), message, remedy);
  }

  private static String rows(List<BoneEntry> rows) {
    return rows.size() == 1 ? "row " + rows.get(0).row() : rows.size() + " rows";
  }
}
