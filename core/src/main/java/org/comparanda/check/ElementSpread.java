package org.comparanda.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.comparanda.bone.ElementKey;
import org.comparanda.measurement.MeasurementCode;

/** Judges every bone of one element with the measurements that it has. */
final class ElementSpread {
  private final List<BoneEntry> bones;
  private final Map<MeasurementCode, Long> counts = new HashMap<>();
  private final Map<List<MeasurementCode>, TaxonSpread> spreads = new HashMap<>();

  private ElementSpread(List<BoneEntry> bones) {
    this.bones = bones;
    for (BoneEntry bone : bones) {
      bone.values().keySet().forEach(code -> counts.merge(code, 1L, Long::sum));
    }
  }

  /** For each element, from the bones that may feed fits. */
  static Map<ElementKey, ElementSpread> of(ShelfEntries entries) {
    Map<ElementKey, ElementSpread> spreads = new LinkedHashMap<>();
    ShelfEntries.grouped(
            entries.all().stream()
                .filter(b -> b.feedsFits() && b.taxon().isPresent() && !b.values().isEmpty())
                .filter(b -> b.values().values().stream().allMatch(mm -> mm > 0))
                .toList(),
            BoneEntry::element)
        .forEach((element, bones) -> spreads.put(element, new ElementSpread(bones)));
    return spreads;
  }

  List<BoneEntry> bones() {
    return bones;
  }

  /**
   * By all its measurements; the rarest are left out one after the other while too few animals have
   * the same ones.
   */
  Optional<Judged> judge(BoneEntry bone) {
    List<MeasurementCode> codes = new ArrayList<>(bone.values().keySet());
    codes.sort(
        Comparator.comparing((MeasurementCode c) -> counts.getOrDefault(c, 0L))
            .thenComparing(Comparator.naturalOrder()));
    for (int from = 0; from < codes.size(); from++) {
      List<MeasurementCode> set = List.copyOf(new TreeSet<>(codes.subList(from, codes.size())));
      Optional<Judged> judged = spreads.computeIfAbsent(set, this::spread).judge(bone);
      if (judged.isPresent()) {
        return judged;
      }
    }
    return Optional.empty();
  }

  private TaxonSpread spread(List<MeasurementCode> codes) {
    return new TaxonSpread(
        codes, bones.stream().filter(b -> b.values().keySet().containsAll(codes)).toList());
  }
}
