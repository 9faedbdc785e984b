package org.comparanda.suggestion;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.comparanda.statistics.Outcome;
import org.comparanda.statistics.discriminant.GroupDistance;
import org.comparanda.statistics.discriminant.GroupDistances;
import org.comparanda.statistics.discriminant.GroupMoments;
import org.comparanda.statistics.discriminant.SizeAlone;
import org.comparanda.statistics.discriminant.WithoutSize;

/** What the same animals say of a bone when size is taken out, and where that disagrees. */
final class SizeFree {
  private final Thresholds limits;

  SizeFree(Thresholds limits) {
    this.limits = limits;
  }

  /** Typicalities without size, in the order of the fits; none under 3 measurements. */
  List<SizeFreeFit> of(Fit fit, BoneRow bone, List<TaxonFit> fits) {
    GroupMoments moments = fit.moments();
    double[] x = fit.sample().numbers(bone);
    Outcome<List<GroupDistance>> shape =
        WithoutSize.proportions(x.length).then(w -> distances(w, moments, x));
    Outcome<List<GroupDistance>> adjusted =
        WithoutSize.adjusted(moments).then(w -> distances(w, moments, x));
    SizeAlone alone = SizeAlone.of(x.length);
    Outcome<List<GroupDistance>> size =
        GroupDistances.of(alone.moments(moments)).then(d -> Outcome.of(d.to(alone.row(x))));
    return shape
        .then(
            s ->
                adjusted.then(a -> size.then(z -> Outcome.of(paired(fit.sample(), fits, s, a, z)))))
        .value()
        .orElse(List.of());
  }

  private static Outcome<List<GroupDistance>> distances(
      WithoutSize without, GroupMoments moments, double... x) {
    return GroupDistances.of(without.moments(moments)).then(d -> Outcome.of(d.to(without.row(x))));
  }

  private static List<SizeFreeFit> paired(
      Sample sample,
      List<TaxonFit> fits,
      List<GroupDistance> shape,
      List<GroupDistance> adjusted,
      List<GroupDistance> size) {
    List<SizeFreeFit> paired = new ArrayList<>();
    for (TaxonFit fit : fits) {
      int group = sample.taxa().indexOf(fit.taxon());
      paired.add(
          new SizeFreeFit(
              fit.taxon(),
              typicality(shape, group),
              typicality(adjusted, group),
              typicality(size, group)));
    }
    return paired;
  }

  private static double typicality(List<GroupDistance> distances, int group) {
    return distances.stream()
        .filter(d -> d.group() == group)
        .mapToDouble(GroupDistance::typicality)
        .findFirst()
        .orElseThrow();
  }

  /**
   * In words, where size and shape disagree; none where they don't. A taxon with animals enough to
   * go by that fits as a whole and by proportions explains the bone: then nothing disagrees,
   * however many smaller or larger kinds have the same proportions.
   */
  List<String> sentences(List<TaxonFit> fits, List<SizeFreeFit> sizeFree) {
    List<Integer> all = IntStream.range(0, sizeFree.size()).boxed().toList();
    if (all.stream().anyMatch(i -> explains(fits.get(i), sizeFree.get(i)))) {
      return List.of();
    }
    List<SizeFreeFit> shapeOnly =
        all.stream()
            .filter(i -> fits.get(i).typicality() < limits.poorFit())
            .map(sizeFree::get)
            .filter(f -> f.byProportions() >= limits.poorFit() && f.bySize() < limits.poorFit())
            .toList();
    if (!shapeOnly.isEmpty()) {
      return List.of(
          "By proportions it fits " + Wording.either(names(shapeOnly)) + ", by size it doesn't.",
          withinKind(shapeOnly));
    }
    return sizeFree.isEmpty()
            || fits.get(0).typicality() < limits.poorFit()
            || sizeFree.get(0).byProportions() >= limits.nothingFits()
        ? List.of()
        : List.of("As a whole it fits " + fits.get(0).taxon() + ", by proportions it doesn't.");
  }

  private boolean explains(TaxonFit whole, SizeFreeFit sizeFree) {
    return !whole.thin()
        && whole.typicality() >= limits.poorFit()
        && sizeFree.byProportions() >= limits.poorFit();
  }

  private String withinKind(List<SizeFreeFit> shapeOnly) {
    List<SizeFreeFit> explained =
        shapeOnly.stream().filter(f -> f.sizeAdjusted() >= limits.poorFit()).toList();
    return explained.isEmpty()
        ? "Such a size is not reached the way animals of one kind differ on the shelf."
        : "It could be a larger or smaller "
            + Wording.either(names(explained))
            + ", as animals of one kind differ on the shelf.";
  }

  private static List<String> names(List<SizeFreeFit> fits) {
    return fits.stream().map(f -> f.taxon().value()).toList();
  }
}
