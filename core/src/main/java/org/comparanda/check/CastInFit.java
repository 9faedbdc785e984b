package org.comparanda.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.comparanda.bone.Flag;

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
    List<Finding> findings = new ArrayList<>();
    ShelfEntries.grouped(
            entries.all().stream().filter(r -> CAST.matcher(r.remarks()).find()).toList(),
            r -> new Remark(r.animal(), r.remarks()))
        .forEach(
            (remark, rows) -> {
              List<BoneEntry> suspects = rows.stream().filter(BoneEntry::feedsFits).toList();
              if (!suspects.isEmpty()) {
                findings.add(finding(remark, rows, suspects));
              }
            });
    return findings;
  }

  private Finding finding(Remark remark, List<BoneEntry> rows, List<BoneEntry> suspects) {
    Optional<BoneEntry> flagged =
        rows.stream().filter(r -> r.flags().contains(Flag.CAST)).findFirst();
    return Finding.ofAnimal(
            kind(),
            remark.animal(),
            ShelfEntries.bone(suspects),
            "remarks",
            remark.text(),
            "The remark \"%s\" speaks of a cast, but the bone feeds fits.".formatted(remark.text()),
            flagged
                .map(
                    cast ->
                        "The %s is flagged as cast: if no other is one, accept this."
                            .formatted(cast.bone()))
                .orElse("Look at the bone and flag it as cast, or reword the remark."))
        .correctedBy(flagged.isPresent() ? Optional.empty() : flag(suspects));
  }

  /** Of several bones the remark doesn't say which one is cast. */
  private static Optional<Correction> flag(List<BoneEntry> rows) {
    return rows.size() == 1
        ? Optional.of(Correction.BoneFlag.of(rows.get(0), Flag.CAST))
        : Optional.empty();
  }
}
