package org.comparanda.gui.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.Animal;
import org.comparanda.reference.AnimalId;
import org.comparanda.reference.ShelfBone;

/** More simulated animals after the pattern of those that are there, each a little different. */
final class Crowd {
  private static final double SIZE = 0.05; // standard deviation of the logarithm, one an animal
  private static final double SHAPE = 0.02; // and one a value

  private Crowd() {}

  /** As many as are missing to that number. */
  static List<Animal> upTo(int number, List<Animal> patterns, SplittableRandom random) {
    List<Animal> more = new ArrayList<>();
    for (int i = patterns.size(); i < number; i++) {
      more.add(like(patterns.get(i % patterns.size()), "CR-" + i, random));
    }
    return more;
  }

  private static Animal like(Animal a, String id, SplittableRandom random) {
    double size = SIZE * random.nextGaussian();
    List<ShelfBone> bones = a.bones().stream().map(b -> like(b, size, random)).toList();
    return new Animal(
        new AnimalId(id),
        a.taxon(),
        a.source(),
        a.drawer(),
        a.sex(),
        a.ageClass(),
        a.origin(),
        a.bodyLengthMm(),
        a.bodyMassG(),
        a.flags(),
        a.remarks(),
        bones);
  }

  private static ShelfBone like(ShelfBone b, double size, SplittableRandom random) {
    Map<MeasurementCode, Double> values = new TreeMap<>();
    b.values()
        .forEach(
            (code, mm) -> values.put(code, mm * Math.exp(size + SHAPE * random.nextGaussian())));
    return new ShelfBone(b.element(), b.side(), b.portion(), b.flags(), values);
  }
}
