package org.comparanda.register;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.comparanda.bone.Flag;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.Animal;
import org.comparanda.reference.ShelfBone;
import org.comparanda.statistics.Outcome;

/**
 * Two catalogue numbers that are one animal. The kept one gets what it lacks from the other: bones,
 * values of bones that both have, empty fields, and the bones that were measured on the Shelf with
 * their readings. Where both say something, the kept one stays.
 *
 * @param result the kept card as it becomes
 * @param measured bones of the other that were measured, as bones of the kept one
 * @param differing what the two say differently; the other's stays in its own record
 */
public record Merge(AnimalCard result, List<SkeletonBone> measured, List<Change> differing) {
  private static final List<CardField> STRICTEST = List.of(CardField.FLAGS, CardField.EXPORT);

  /** Fields that mean something only together with the value of another one. */
  private static final Map<CardField, CardField> BELONGS_TO =
      Map.of(
          CardField.DRAWER, CardField.SOURCE,
          CardField.SOURCE_NAME, CardField.SOURCE,
          CardField.LENGTH_ON, CardField.BODY_LENGTH,
          CardField.LENGTH_HOW, CardField.BODY_LENGTH,
          CardField.LENGTH_KIND, CardField.BODY_LENGTH,
          CardField.MASS_ON, CardField.BODY_MASS,
          CardField.MASS_HOW, CardField.BODY_MASS,
          CardField.MASS_KIND, CardField.BODY_MASS);

  /**
   * One of the two.
   *
   * @param measured its bones that were measured on the Shelf
   */
  public record Skeleton(AnimalCard card, List<SkeletonBone> measured) {
    public Skeleton {
      measured = List.copyOf(measured);
    }
  }

  public Merge {
    measured = List.copyOf(measured);
    differing = List.copyOf(differing);
  }

  /** None when they are of two taxa, the same one, or not both on the shelf. */
  public static Outcome<Merge> of(Skeleton first, Skeleton second) {
    AnimalCard kept = first.card();
    AnimalCard other = second.card();
    if (kept.id().equals(other.id())) {
      return refused("Both numbers are " + kept.id() + ".", "Give the second number.");
    }
    for (AnimalCard card : List.of(kept, other)) {
      if (!card.standing().onTheShelf()) {
        return refused(
            card.id() + " is " + Changes.words(card.standing()) + ".",
            "Only animals on the shelf can be merged.");
      }
    }
    if (kept.animal().taxon().isPresent()
        && other.animal().taxon().isPresent()
        && !kept.animal().taxon().equals(other.animal().taxon())) {
      return refused(
          "%s is %s and %s is %s."
              .formatted(
                  kept.id(), kept.animal().taxon().get(), other.id(), other.animal().taxon().get()),
          "One animal is of one taxon: correct the wrong one first, with a reason.");
    }
    List<Change> differing = new ArrayList<>();
    AnimalCard card = fields(kept, other, differing);
    card = strictest(card, other);
    card =
        card.withAnimal(card.animal().withBones(bones(kept.animal(), other.animal(), differing)));
    return Outcome.of(new Merge(card, measured(first, second, differing), differing));
  }

  /**
   * A measured bone goes along where the kept one has no measured bone and says nothing else of its
   * values; else its readings would speak against the values that stay.
   */
  private static List<SkeletonBone> measured(
      Skeleton kept, Skeleton other, List<Change> differing) {
    List<SkeletonBone> along = new ArrayList<>();
    for (SkeletonBone theirs : other.measured()) {
      BonePlace place = theirs.place();
      Optional<String> stays =
          kept.measured().stream()
              .filter(mine -> mine.place().equals(place))
              .map(mine -> mine.id().value())
              .findFirst()
              .or(
                  () ->
                      differ(kept, other, place) ? Optional.of("other values") : Optional.empty());
      stays.ifPresentOrElse(
          mine ->
              differing.add(new Change(place.words() + " measured as", theirs.id().value(), mine)),
          () -> along.add(theirs.of(kept.card().id())));
    }
    return along;
  }

  private static boolean differ(Skeleton kept, Skeleton other, BonePlace place) {
    Map<MeasurementCode, Double> mine = values(kept, place);
    return values(other, place).entrySet().stream()
        .anyMatch(v -> !mine.getOrDefault(v.getKey(), v.getValue()).equals(v.getValue()));
  }

  private static Map<MeasurementCode, Double> values(Skeleton of, BonePlace place) {
    return bone(of.card().animal(), place).map(ShelfBone::values).orElse(Map.of());
  }

  private static Optional<ShelfBone> bone(Animal of, BonePlace place) {
    return of.bones().stream().filter(bone -> BonePlace.of(bone).equals(place)).findFirst();
  }

  private static Outcome<Merge> refused(String reason, String remedy) {
    return Outcome.none(reason + " Nothing was merged.", remedy);
  }

  private static AnimalCard fields(AnimalCard kept, AnimalCard other, List<Change> differing) {
    AnimalCard card = kept;
    for (CardField field : CardField.values()) {
      String mine = field.text(kept);
      String theirs = field.text(other);
      CardField owner = BELONGS_TO.getOrDefault(field, field);
      boolean mayTake =
          owner == field || says(owner.text(kept)).isEmpty() || same(owner, kept, other);
      if (says(mine).isEmpty() && mayTake) {
        card = field.write(card, theirs).value().orElse(card);
      } else if (!mine.equals(theirs) && says(theirs).isPresent() && !STRICTEST.contains(field)) {
        differing.add(new Change(field.words(), theirs, mine));
      }
    }
    return card;
  }

  private static boolean same(CardField field, AnimalCard one, AnimalCard two) {
    return field.text(one).equals(field.text(two));
  }

  private static Optional<String> says(String text) {
    return Optional.of(text).filter(t -> !t.isEmpty() && !t.equals("not known"));
  }

  /** What keeps one of the two out of fits, or in the house, holds for both. */
  private static AnimalCard strictest(AnimalCard card, AnimalCard other) {
    Set<Flag> flags = new HashSet<>(card.animal().flags());
    flags.addAll(other.animal().flags());
    AnimalCard flagged = card.withAnimal(card.animal().withFlags(flags));
    return other.restriction().export() == Restriction.Export.FORBIDDEN
        ? flagged.withRestriction(flagged.restriction().withExport(Restriction.Export.FORBIDDEN))
        : flagged;
  }

  private static List<ShelfBone> bones(Animal kept, Animal other, List<Change> differing) {
    List<ShelfBone> bones = new ArrayList<>(kept.bones());
    for (ShelfBone theirs : other.bones()) {
      Optional<ShelfBone> mine = bone(kept, BonePlace.of(theirs));
      if (mine.isEmpty()) {
        bones.add(theirs);
      } else {
        bones.set(bones.indexOf(mine.get()), together(mine.get(), theirs, differing));
      }
    }
    return bones;
  }

  private static ShelfBone together(ShelfBone mine, ShelfBone theirs, List<Change> differing) {
    Map<MeasurementCode, Double> values = new TreeMap<>(theirs.values());
    mine.values()
        .forEach(
            (code, value) -> {
              Double old = values.put(code, value);
              if (old != null && !old.equals(value)) {
                differing.add(
                    new Change(
                        Changes.name(mine) + " " + code,
                        PlainNumber.text(old),
                        PlainNumber.text(value)));
              }
            });
    Set<Flag> flags = new HashSet<>(mine.flags());
    flags.addAll(theirs.flags());
    return new ShelfBone(mine.element(), mine.side(), mine.portion(), flags, values);
  }
}
