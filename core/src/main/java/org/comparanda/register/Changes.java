package org.comparanda.register;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.reference.ShelfBone;

/** All that differs between two states of one animal's card. */
public final class Changes {
  private Changes() {}

  /**
   * Field by field in the order of the card, then bone by bone. Bones are told apart by their place
   * in the list: they may be added at its end, and never go.
   *
   * <p>Errors: {@link IllegalArgumentException} if the cards are of two animals or a bone is gone
   */
  public static List<Change> between(AnimalCard before, AnimalCard after) {
    List<ShelfBone> had = before.animal().bones();
    List<ShelfBone> has = after.animal().bones();
    if (!before.id().equals(after.id()) || has.size() < had.size()) {
      throw new IllegalArgumentException(
          "Only changes of one animal that keep its bones can be recorded.");
    }
    List<Change> changes = new ArrayList<>();
    for (CardField field : CardField.values()) {
      add(changes, field.words(), field.text(before), field.text(after));
    }
    add(changes, "standing", words(before.standing()), words(after.standing()));
    for (int i = 0; i < has.size(); i++) {
      bone(changes, i < had.size() ? Optional.of(had.get(i)) : Optional.empty(), has.get(i));
    }
    return List.copyOf(changes);
  }

  private static void bone(List<Change> changes, Optional<ShelfBone> before, ShelfBone after) {
    String name = name(after);
    add(changes, "bone", before.map(Changes::name).orElse(""), name);
    add(changes, name + " flags", before.map(Changes::flags).orElse(""), flags(after));
    TreeSet<MeasurementCode> codes = new TreeSet<>(after.values().keySet());
    before.ifPresent(b -> codes.addAll(b.values().keySet()));
    for (MeasurementCode code : codes) {
      add(
          changes,
          name + " " + code,
          before.map(b -> value(b, code)).orElse(""),
          value(after, code));
    }
  }

  private static void add(List<Change> changes, String what, String was, String is) {
    if (!was.equals(is)) {
      changes.add(new Change(what, was, is));
    }
  }

  /** Element, side where it has one, portion where it is not whole. */
  public static String name(ShelfBone bone) {
    return BonePlace.of(bone).words();
  }

  private static String flags(ShelfBone bone) {
    return bone.flags().stream()
        .map(f -> f.name().toLowerCase(Locale.ROOT))
        .sorted()
        .collect(Collectors.joining("|"));
  }

  private static String value(ShelfBone bone, MeasurementCode code) {
    return Optional.ofNullable(bone.values().get(code)).map(PlainNumber::text).orElse("");
  }

  public static String words(Standing standing) {
    if (standing.setAside()) {
      return "set aside as possibly human";
    }
    return standing
        .mergedInto()
        .map(id -> "merged into " + id)
        .orElse(standing.onTheShelf() ? "on the shelf" : "retired");
  }
}
