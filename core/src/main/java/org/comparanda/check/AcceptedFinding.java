package org.comparanda.check;

import java.time.Instant;
import java.util.Optional;
import org.comparanda.measurement.PersonId;

/**
 * A finding that a keeper has looked at and accepts, with the reason. It holds as long as the value
 * in question stays the same; where more than one value is in question, as long as all of them do.
 *
 * @param basis all that the finding rested on, where it was more than the value; empty also where
 *     an older form of the file didn't keep it
 * @param who empty where nobody said so
 */
public record AcceptedFinding(
    FindingKind kind,
    Optional<String> animal,
    Optional<String> bone,
    Optional<String> column,
    Optional<String> value,
    Optional<String> basis,
    String reason,
    Optional<PersonId> who,
    Instant at) {
  /** Errors: {@link IllegalArgumentException} without a reason. */
  public AcceptedFinding {
    if (reason.isBlank()) {
      throw new IllegalArgumentException("A finding is accepted with a reason.");
    }
  }

  public static AcceptedFinding of(
      Finding finding, String reason, Optional<PersonId> who, Instant at) {
    return new AcceptedFinding(
        finding.kind(),
        finding.animal(),
        finding.bone(),
        finding.column(),
        finding.value(),
        finding.basis(),
        reason,
        who,
        at);
  }

  boolean accepts(Finding finding) {
    return kind == finding.kind()
        && animal.equals(finding.animal())
        && bone.equals(finding.bone())
        && (basis.isPresent()
            ? basis.equals(finding.basis())
            : column.equals(finding.column()) && value.equals(finding.value()));
  }
}
