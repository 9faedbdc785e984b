package org.comparanda.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.statistics.Distributions;
import org.comparanda.statistics.discriminant.GroupDistances;
import org.comparanda.statistics.discriminant.GroupMoments;
import org.comparanda.statistics.discriminant.GroupedRows;
import org.comparanda.statistics.discriminant.SidePairs;
import org.comparanda.statistics.discriminant.UnitMoments;
import org.comparanda.statistics.robust.MinimumCovarianceDeterminant;
import org.comparanda.taxon.TaxonName;

/**
 * How the animals of each taxon vary in one set of measurements of one element, in natural logs,
 * without the animals that lie far out.
 *
 * <p>An animal is one row, the mean of its bones. A taxon of many animals has a spread of its own,
 * the others share the pooled one.
 */
final class TaxonSpread {
  private static final double FAR_OUT = 0.001;

  /** With fewer the innermost half is too small a sample, and sound rows look far out. */
  private static final int ROWS_PER_MEASUREMENT = 10;

  /** Chance starts are plenty when one row in ten is wrong: more than half are clean. */
  private static final MinimumCovarianceDeterminant ROBUST =
      MinimumCovarianceDeterminant.withDefaults().withStarts(60).withAllSubsets(200);

  private final List<MeasurementCode> codes;
  private final Map<TaxonName, Integer> groups = new LinkedHashMap<>();
  private final Map<String, Integer> units = new HashMap<>();
  private final GroupedRows rows;
  private final UnitMoments pooled;
  private final Map<Integer, UnitMoments> own = new HashMap<>();

  /** From the bones of one element that have all the codes, a taxon, and only values above zero. */
  TaxonSpread(List<MeasurementCode> codes, List<BoneEntry> bones) {
    this.codes = List.copyOf(codes);
    List<AnimalLogs> animals = new ArrayList<>();
    List<SidesDiffer.SidePair> pairs = new ArrayList<>();
    ShelfEntries.grouped(bones, b -> b.taxon().orElseThrow())
        .forEach((taxon, of) -> taxon(taxon, of, animals, pairs));
    rows = sound(animals).withSides(sides(pairs));
    pooled = UnitMoments.of(rows);
  }

  private void taxon(
      TaxonName taxon,
      List<BoneEntry> bones,
      List<AnimalLogs> animals,
      List<SidesDiffer.SidePair> pairs) {
    int group = groups.size();
    groups.put(taxon, group);
    Map<String, List<BoneEntry>> of = ShelfEntries.grouped(bones, BoneEntry::animal);
    List<double[]> means = of.values().stream().map(this::mean).toList();
    List<double[]> about = aboutMedian(means);
    int here = 0;
    for (String animal : of.keySet()) {
      int unit = units.computeIfAbsent(animal, a -> units.size());
      animals.add(new AnimalLogs(group, unit, of.size(), means.get(here), about.get(here)));
      here++;
    }
    of.values().forEach(b -> SidesDiffer.SidePair.of(b).ifPresent(pairs::add));
  }

  List<MeasurementCode> codes() {
    return codes;
  }

  /** Whether a taxon's own spread can be told. */
  private boolean many(int animals) {
    return animals >= 4 * codes.size() + 10;
  }

  /** One animal as a row, and how it lies about the middle of its taxon. */
  private static final class AnimalLogs {
    private final int group;
    private final int unit;
    private final int ofItsTaxon;
    private final double[] mean;
    private final double[] aboutMedian;

    AnimalLogs(int group, int unit, int ofItsTaxon, double[] mean, double[] aboutMedian) {
      this.group = group;
      this.unit = unit;
      this.ofItsTaxon = ofItsTaxon;
      this.mean = mean;
      this.aboutMedian = aboutMedian;
    }
  }

  /** Without those far out of their own taxon, where that is large, or of the pooled spread. */
  private GroupedRows sound(List<AnimalLogs> animals) {
    Set<AnimalLogs> out = new HashSet<>();
    for (int group : groups.values()) {
      List<AnimalLogs> taxon =
          animals.stream().filter(a -> a.group == group && many(a.ofItsTaxon)).toList();
      farOut(taxon.stream().map(a -> a.mean).toList()).forEach(i -> out.add(taxon.get(i)));
    }
    List<AnimalLogs> shared =
        animals.stream().filter(a -> a.ofItsTaxon > 1 && !out.contains(a)).toList();
    farOut(shared.stream().map(a -> a.aboutMedian).toList()).stream()
        .map(shared::get)
        .filter(a -> !many(a.ofItsTaxon))
        .forEach(out::add);
    GroupedRows.Builder builder = GroupedRows.builder(codes.size(), groups.size());
    animals.stream()
        .filter(a -> !out.contains(a))
        .forEach(a -> builder.add(a.group, a.unit, a.mean));
    return builder.build();
  }

  private SidePairs sides(List<SidesDiffer.SidePair> pairs) {
    List<double[]> differences =
        pairs.stream().map(pair -> minus(logs(pair.left()), logs(pair.right()))).toList();
    Set<Integer> out = farOut(differences);
    SidePairs.Builder builder = SidePairs.builder(codes.size());
    for (int i = 0; i < pairs.size(); i++) {
      if (!out.contains(i)) {
        builder.add(
            units.computeIfAbsent(pairs.get(i).left().animal(), a -> units.size()),
            differences.get(i));
      }
    }
    return builder.build();
  }

  /** By all measurements together where rows are many, otherwise by each for itself. */
  private static Set<Integer> farOut(List<double[]> logs) {
    Set<Integer> far = new HashSet<>();
    int p = logs.isEmpty() ? 0 : logs.get(0).length;
    if (logs.size() >= ROWS_PER_MEASUREMENT * p) {
      addFarOut(logs, FAR_OUT, far);
    } else {
      for (int j = 0; j < p; j++) {
        int column = j;
        addFarOut(logs.stream().map(v -> new double[] {v[column]}).toList(), FAR_OUT / p, far);
      }
    }
    return far;
  }

  private static void addFarOut(List<double[]> logs, double level, Set<Integer> far) {
    ROBUST
        .of(logs)
        .value()
        .ifPresent(
            spread -> {
              double limit = Distributions.chiSquareQuantile(1 - level, logs.get(0).length);
              for (int i = 0; i < logs.size(); i++) {
                if (spread.squared().get(i) > limit) {
                  far.add(i);
                }
              }
            });
  }

  /** Of its taxon without its own animal; empty where too few animals are left. */
  Optional<Judged> judge(BoneEntry bone) {
    Integer group = bone.taxon().map(groups::get).orElse(null);
    Integer unit = units.get(bone.animal());
    if (group == null || unit == null) {
      return Optional.empty();
    }
    UnitMoments of =
        many(rows.count(group))
            ? own.computeIfAbsent(group, g -> UnitMoments.of(rows.onlyGroup(g)))
            : pooled;
    GroupMoments others = of.without(unit);
    return others.count(group) == 0
        ? Optional.empty()
        : GroupDistances.of(others)
            .value()
            .flatMap(distances -> Judged.of(codes, others, distances, group, logs(bone)));
  }

  private double[] mean(List<BoneEntry> bones) {
    double[] sum = new double[codes.size()];
    for (BoneEntry bone : bones) {
      double[] logs = logs(bone);
      for (int j = 0; j < sum.length; j++) {
        sum[j] += logs[j] / bones.size();
      }
    }
    return sum;
  }

  private double[] logs(BoneEntry bone) {
    return codes.stream().mapToDouble(c -> Math.log(bone.value(c))).toArray();
  }

  /** Scaled so that the spread about the middle of few animals is that of the kind. */
  private List<double[]> aboutMedian(List<double[]> logs) {
    int n = logs.size();
    double scale = n > 1 ? Math.sqrt(n / (n - 1.0)) : 1;
    double[] middle = new double[codes.size()];
    for (int j = 0; j < middle.length; j++) {
      int column = j;
      middle[j] = UsualValues.median(logs.stream().map(v -> v[column]).toList());
    }
    return logs.stream()
        .map(
            v -> {
              double[] d = minus(v, middle);
              for (int j = 0; j < d.length; j++) {
                d[j] *= scale;
              }
              return d;
            })
        .toList();
  }

  private static double[] minus(double[] a, double[] b) {
    double[] d = new double[a.length];
    for (int j = 0; j < d.length; j++) {
      d[j] = a[j] - b[j];
    }
    return d;
  }
}
