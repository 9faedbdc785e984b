package org.comparanda.tray;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * All calls on one bone and which of them holds.
 *
 * @param calls all rows, oldest first
 */
public record CallHistory(List<Call> calls) {
  public CallHistory {
    calls = List.copyOf(calls);
  }

  /** Those that stand: not taken back, and no withdrawals. */
  public List<Call> standing() {
    Set<Long> taken =
        calls.stream()
            .filter(c -> c.kind() == Call.Kind.WITHDRAWAL)
            .flatMap(c -> c.answers().stream())
            .collect(Collectors.toSet());
    return calls.stream()
        .filter(c -> c.kind() != Call.Kind.WITHDRAWAL && !taken.contains(c.id()))
        .toList();
  }

  /** The call that holds now; a second look holds only once it was resolved so. */
  public Optional<Call> holding() {
    return standing().stream()
        .filter(c -> c.kind() != Call.Kind.SECOND_LOOK)
        .reduce((earlier, later) -> later);
  }

  /** The first call that stands and is no second look. */
  public Optional<Call> first() {
    return standing().stream().filter(c -> c.kind() == Call.Kind.CALL).findFirst();
  }

  /** The second looks that stand, oldest first. */
  public List<Call> secondLooks() {
    return standing().stream().filter(c -> c.kind() == Call.Kind.SECOND_LOOK).toList();
  }

  /** The latest third person's call or consensus that stands. */
  public Optional<Call> resolution() {
    return standing().stream()
        .filter(c -> c.kind() == Call.Kind.THIRD_PERSON || c.kind() == Call.Kind.CONSENSUS)
        .reduce((earlier, later) -> later);
  }
}
