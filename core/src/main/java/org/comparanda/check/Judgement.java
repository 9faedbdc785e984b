package org.comparanda.check;

import java.util.List;
import java.util.Optional;

/** A finding, and whether somebody has accepted it. */
public record Judgement(Finding finding, Optional<AcceptedFinding> accepted) {
  /** Each finding with the latest acceptance that fits it. */
  public static List<Judgement> of(List<Finding> findings, List<AcceptedFinding> accepted) {
    return findings.stream()
        .map(
            f ->
                new Judgement(
                    f, accepted.stream().filter(a -> a.accepts(f)).reduce((old, last) -> last)))
        .toList();
  }
}
