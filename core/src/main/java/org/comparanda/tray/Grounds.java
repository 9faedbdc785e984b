package org.comparanda.tray;

import java.util.List;
import org.comparanda.reference.AnimalId;

/**
 * What a call rests on.
 *
 * @param how by eye, by measurement or both
 * @param comparedWith comparative animals that were laid beside it
 * @param why one line where the call goes against the suggestion; else may be empty
 * @param traits what was seen of the traits of a look-alike pair
 * @param asWritten the name as the person wrote it; empty when it was picked
 */
public record Grounds(
    How how, List<AnimalId> comparedWith, String why, List<TraitAnswer> traits, String asWritten) {
  public Grounds {
    comparedWith = List.copyOf(comparedWith);
    traits = List.copyOf(traits);
  }

  /** How a person came to the name. */
  public enum How {
    NOT_SAID,
    BY_EYE,
    BY_MEASUREMENT,
    BY_BOTH
  }

  /** Nothing said. */
  public static Grounds notSaid() {
    return new Grounds(How.NOT_SAID, List.of(), "", List.of(), "");
  }

  public Grounds withHow(How next) {
    return new Grounds(next, comparedWith, why, traits, asWritten);
  }

  public Grounds withComparedWith(List<AnimalId> next) {
    return new Grounds(how, next, why, traits, asWritten);
  }

  public Grounds withWhy(String next) {
    return new Grounds(how, comparedWith, next, traits, asWritten);
  }

  public Grounds withTraits(List<TraitAnswer> next) {
    return new Grounds(how, comparedWith, why, next, asWritten);
  }

  public Grounds withAsWritten(String next) {
    return new Grounds(how, comparedWith, why, traits, next);
  }
}
