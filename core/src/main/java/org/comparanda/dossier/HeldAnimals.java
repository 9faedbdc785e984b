package org.comparanda.dossier;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import org.comparanda.register.AnimalCard;
import org.comparanda.register.Restriction;

/**
 * Which animals of the shelf leave the house in an export.
 *
 * @param open those that go out
 * @param restricted those kept back: export forbidden, or the word "restricted" in the remarks
 * @param offTheShelf those that were retired or merged; their record stays in the collection
 * @param setAside those of which a bone may be human
 */
public record HeldAnimals(List<AnimalCard> open, long restricted, long offTheShelf, long setAside) {
  /** An animal whose remarks hold this word stays in the house. */
  private static final String RESTRICTED = "restricted";

  public HeldAnimals {
    open = List.copyOf(open);
  }

  /** Whether restricted animals go out. */
  public enum Restricted {
    HELD_BACK,
    OPENED
  }

  public static HeldAnimals of(List<AnimalCard> all, Restricted what) {
    Predicate<AnimalCard> onShelf = card -> card.standing().onTheShelf();
    Predicate<AnimalCard> held = card -> what == Restricted.HELD_BACK && isRestricted(card);
    return new HeldAnimals(
        all.stream().filter(onShelf.and(held.negate())).toList(),
        all.stream().filter(onShelf.and(held)).count(),
        all.stream().filter(onShelf.negate()).filter(card -> !card.standing().setAside()).count(),
        all.stream().filter(card -> card.standing().setAside()).count());
  }

  /** Whether this animal stays in the house unless a person with that right opens it. */
  public static boolean isRestricted(AnimalCard card) {
    return card.restriction().export() == Restriction.Export.FORBIDDEN
        || card.animal().remarks().toLowerCase(Locale.ROOT).contains(RESTRICTED);
  }

  /** What was held back, in words. */
  public String sentence() {
    List<String> parts = new ArrayList<>();
    if (restricted > 0) {
      parts.add(restricted + (restricted == 1 ? " restricted animal" : " restricted animals"));
    }
    if (offTheShelf > 0) {
      parts.add(offTheShelf + " no longer on the shelf");
    }
    if (setAside > 0) {
      parts.add(setAside + " set aside as possibly human");
    }
    return parts.isEmpty() ? "nothing was held back" : "held back: " + String.join(", ", parts);
  }
}
