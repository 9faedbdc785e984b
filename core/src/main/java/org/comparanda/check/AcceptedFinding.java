package org.comparanda.check;

import java.time.Instant;
import java.util.Optional;

/**
 * A finding that a keeper has looked at and accepts, with the reason. It holds as long as the value
 * in question stays the same.
 */
public record AcceptedFinding(
    FindingKind kind,
    Optional<String> animal,
    Optional<String> bone,
    Optional<String> column,
    Optional<String> value,
    String reason,
    Instant at) {
  /** Errors: {@link IllegalArgumentException} without a reason. */
  public AcceptedFinding {
    if (reason.isBlank()) {
      throw new IllegalArgumentException("A finding is accepted with a reason.");
    }
  }

  public static AcceptedFinding of(Finding finding, String reason, Instant at) {
    return new AcceptedFinding(
        finding.kind(),
        finding.animal(),
        finding.bone(),
        finding.column(),
        finding.value(),
        reason,
        at);
  }

  boolean accepts(Finding finding) {
    return kind == finding.kind()
        && animal.equals(finding.animal())
        && bone.equals(finding.bone())
        && column.equals(finding.column())
        && value.equals(finding.value());
  }
}
