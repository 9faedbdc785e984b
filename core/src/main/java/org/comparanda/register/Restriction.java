package org.comparanda.register;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Under what terms the house holds an animal. The program reminds; what holds is what the permit
 * itself says.
 *
 * @param permit number of the permit, empty for none
 * @param words what the permit says, as copied from it; may be empty
 * @param export whether its record may leave the house
 * @param handOverBy day until which it is to be handed over, if there is one
 */
public record Restriction(
    String permit, String words, Export export, Optional<LocalDate> handOverBy) {
  /** Whether the record may leave the house. */
  public enum Export {
    ALLOWED,
    FORBIDDEN
  }

  static Restriction none() {
    return new Restriction("", "", Export.ALLOWED, Optional.empty());
  }

  Restriction withPermit(String other) {
    return new Restriction(other, words, export, handOverBy);
  }

  Restriction withWords(String other) {
    return new Restriction(permit, other, export, handOverBy);
  }

  Restriction withExport(Export other) {
    return new Restriction(permit, words, other, handOverBy);
  }

  Restriction withHandOverBy(Optional<LocalDate> other) {
    return new Restriction(permit, words, export, other);
  }
}
