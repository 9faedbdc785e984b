package org.comparanda.dossier;

import java.util.Map;
import java.util.Optional;
import org.comparanda.measurement.PersonId;
import org.comparanda.tray.Keeping;
import org.comparanda.tray.Lot;

/**
 * What may leave the house that usually doesn't.
 *
 * @param placesBy who opens exact places; nobody when empty
 * @param restrictedBy who opens restricted bones; nobody when empty
 * @param lots how sensitive the places of each lot are; held back where a lot isn't named
 */
public record Openness(
    Optional<PersonId> placesBy, Optional<PersonId> restrictedBy, Map<String, Lot.Places> lots) {
  public Openness {
    lots = Map.copyOf(lots);
  }

  /** Nothing is opened. */
  public static Openness closed() {
    return new Openness(Optional.empty(), Optional.empty(), Map.of());
  }

  /** Whether the recorded place of this bone goes out. */
  public boolean placeGoesOut(Dossier bone) {
    return switch (lots.getOrDefault(bone.tray().lot(), Lot.Places.HELD_BACK)) {
      case GO_OUT -> true;
      case HELD_BACK -> placesBy.isPresent();
      case NEVER_OUT -> false;
    };
  }

  /** Whether this bone stays in the house because it is restricted. */
  public boolean keeps(Dossier bone) {
    return bone.bone().keeping().access() == Keeping.Access.RESTRICTED && restrictedBy.isEmpty();
  }

  /** Who opened what, in words; empty when nobody did. */
  public String sentence() {
    return placesBy.map(p -> "; exact places opened by " + p.value()).orElse("")
        + restrictedBy.map(p -> "; what is restricted opened by " + p.value()).orElse("");
  }
}
