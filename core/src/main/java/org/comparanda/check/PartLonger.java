package org.comparanda.check;

import java.util.ArrayList;
import java.util.List;
import org.comparanda.measurement.PartRule;

/** A part is longer than the whole that holds it, by the rules of the protocol. */
record PartLonger() implements ShelfCheck {
  @Override
  public FindingKind kind() {
    return FindingKind.PART_LONGER;
  }

  @Override
  public List<Finding> check(ShelfEntries entries) {
    List<Finding> findings = new ArrayList<>();
    for (BoneEntry entry : entries.all()) {
      for (PartRule rule : entries.protocol().partRules(entry.element())) {
        Double part = entry.values().get(rule.part());
        Double whole = entry.values().get(rule.whole());
        if (part != null && whole != null && part > whole) {
          findings.add(
              Finding.ofValue(
                      kind(),
                      entry,
                      rule.part().value(),
                      part,
                      "%s is %s and longer than %s, which is %s and holds it."
                          .formatted(
                              rule.part(),
                              Millimetres.number(part),
                              rule.whole(),
                              Millimetres.number(whole)),
                      "Measure both again; they may stand in each other's column.")
                  .restingOn(
                      "%s %s, %s %s"
                          .formatted(
                              rule.part(),
                              Millimetres.number(part),
                              rule.whole(),
                              Millimetres.number(whole))));
        }
      }
    }
    return findings;
  }
}
