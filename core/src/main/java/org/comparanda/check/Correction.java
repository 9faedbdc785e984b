package org.comparanda.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Flag;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.Animal;
import org.comparanda.reference.ShelfBone;
import org.comparanda.statistics.Outcome;
import org.comparanda.taxon.TaxonName;

/** What a finding proposes, ready to be put on the animal's card once a person says so. */
public sealed interface Correction {
  /** The animal with it, or none when it is no longer what the finding saw. */
  Outcome<Animal> apply(Animal animal);

  /** A value in place of another, both in mm. */
  record Value(
      ElementKey element, Side side, Portion portion, MeasurementCode code, double was, double is)
      implements Correction {
    static Value of(BoneEntry bone, MeasurementCode code, double is) {
      return new Value(bone.element(), bone.side(), bone.portion(), code, bone.value(code), is);
    }

    @Override
    public Outcome<Animal> apply(Animal animal) {
      return replaced(
          animal,
          bone ->
              at(bone, element, side, portion)
                  && Double.valueOf(was).equals(bone.values().get(code)),
          bone -> {
            Map<MeasurementCode, Double> values = new TreeMap<>(bone.values());
            values.put(code, is);
            return new ShelfBone(element, side, portion, bone.flags(), values);
          });
    }
  }

  /** A flag that keeps one bone out of fits. */
  record BoneFlag(ElementKey element, Side side, Portion portion, Flag flag) implements Correction {
    static BoneFlag of(BoneEntry bone, Flag flag) {
      return new BoneFlag(bone.element(), bone.side(), bone.portion(), flag);
    }

    @Override
    public Outcome<Animal> apply(Animal animal) {
      return replaced(
          animal,
          bone -> at(bone, element, side, portion) && !bone.flags().contains(flag),
          bone -> new ShelfBone(element, side, portion, with(bone.flags(), flag), bone.values()));
    }
  }

  /** A flag that keeps all bones of the animal out of fits. */
  record AnimalFlag(Flag flag) implements Correction {
    @Override
    public Outcome<Animal> apply(Animal animal) {
      return animal.flags().contains(flag)
          ? changedMeanwhile(animal)
          : Outcome.of(animal.withFlags(with(animal.flags(), flag)));
    }
  }

  /** The name of a taxon in place of another. */
  record Name(TaxonName was, TaxonName is) implements Correction {
    @Override
    public Outcome<Animal> apply(Animal animal) {
      return animal.taxon().equals(Optional.of(was))
          ? Outcome.of(animal.withTaxon(Optional.of(is)))
          : changedMeanwhile(animal);
    }
  }

  private static boolean at(ShelfBone bone, ElementKey element, Side side, Portion portion) {
    return bone.element().equals(element) && bone.side() == side && bone.portion() == portion;
  }

  private static Set<Flag> with(Set<Flag> flags, Flag more) {
    Set<Flag> all = new HashSet<>(flags);
    all.add(more);
    return all;
  }

  private static Outcome<Animal> replaced(
      Animal animal,
      Predicate<ShelfBone> which,
      java.util.function.UnaryOperator<ShelfBone> change) {
    List<ShelfBone> bones = new ArrayList<>(animal.bones());
    for (int i = 0; i < bones.size(); i++) {
      if (which.test(bones.get(i))) {
        bones.set(i, change.apply(bones.get(i)));
        return Outcome.of(animal.withBones(bones));
      }
    }
    return changedMeanwhile(animal);
  }

  private static Outcome<Animal> changedMeanwhile(Animal animal) {
    return Outcome.none(
        animal.id() + " is no longer as it was when the list was made. Nothing was stored.",
        "Look again.");
  }
}
