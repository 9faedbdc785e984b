package org.comparanda.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.comparanda.bone.Element;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.bone.Symmetry;
import org.comparanda.measurement.Protocol;

/**
 * One catalogue number has more bones of a kind than one skeleton. Elements whose number varies too
 * much to be counted are not asked; those that the protocol doesn't count come once a side.
 */
record NumberTwice() implements ShelfCheck {
  /** Bones that one animal has once a side. */
  private record Place(String animal, ElementKey element, Side side, Portion portion) {}

  @Override
  public FindingKind kind() {
    return FindingKind.NUMBER_TWICE;
  }

  @Override
  public List<Finding> check(ShelfEntries entries) {
    List<Finding> findings = new ArrayList<>();
    entries
        .byAnimal()
        .forEach((animal, rows) -> first(entries.protocol(), rows).ifPresent(findings::add));
    return findings;
  }

  private Optional<Finding> first(Protocol protocol, List<BoneEntry> rows) {
    Map<Place, List<BoneEntry>> places =
        ShelfEntries.grouped(
            rows.stream().filter(r -> r.side() != Side.NOT_KNOWN).toList(),
            r -> new Place(r.animal(), r.element(), r.side(), r.portion()));
    return places.values().stream()
        .filter(same -> same.size() > allowed(protocol, same.get(0)))
        .findFirst()
        .map(this::finding);
  }

  private Finding finding(List<BoneEntry> same) {
    BoneEntry one = same.get(0);
    return Finding.ofAnimal(
        kind(),
        one.animal(),
        one.bone(),
        "animal",
        one.animal(),
        "%s has %d bones that are %s: rows %s."
            .formatted(
                one.animal(),
                same.size(),
                one.bone(),
                String.join(", ", same.stream().map(r -> String.valueOf(r.row())).toList())),
        "Look at the inked numbers: two animals may share one, or a row was entered twice.");
  }

  private static int allowed(Protocol protocol, BoneEntry row) {
    return protocol
        .element(row.element())
        .filter(e -> !e.region().equals("registered"))
        .map(NumberTwice::perSide)
        .orElse(1);
  }

  private static int perSide(Element element) {
    int most =
        element.perSkeleton().values().stream().mapToInt(n -> n).max().orElse(Integer.MAX_VALUE);
    return Math.max(1, element.symmetry() == Symmetry.AXIAL ? most : most / 2);
  }
}
