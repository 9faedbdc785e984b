package org.comparanda.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** A remark speaks of a cast or replica, and no flag keeps the bone out of fits. */
record CastInFit() implements ShelfCheck {
  private static final Pattern CAST =
      Pattern.compile(
          "\\b(casts?|plaster|replicas?|resin|moulage|3-?d[ -]?print(ed)?)\\b",
          Pattern.CASE_INSENSITIVE);

  /** Rows of one animal with the same remark are one finding. */
  private record Remark(String animal, String text) {}

  @Override
  public FindingKind kind() {
    return FindingKind.CAST_IN_FIT;
  }

  @Override
  public List<Finding> check(ShelfEntries entries) {
    Map<Remark, List<BoneEntry>> suspects =
        ShelfEntries.grouped(
            entries.all().stream()
                .filter(r -> r.feedsFits() && CAST.matcher(r.remarks()).find())
                .toList(),
            r -> new Remark(r.animal(), r.remarks()));
    List<Finding> findings = new ArrayList<>();
    suspects.forEach(
        (remark, rows) ->
            findings.add(
                Finding.ofAnimal(
                    kind(),
                    remark.animal(),
                    ShelfEntries.bone(rows),
                    "remarks",
                    remark.text(),
                    "The remark \"%s\" speaks of a cast, but the bone feeds fits."
                        .formatted(remark.text()),
                    "Look at the bone and flag it as cast, or reword the remark.")));
    return findings;
  }
}
