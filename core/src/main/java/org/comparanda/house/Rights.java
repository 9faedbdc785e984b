package org.comparanda.house;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.comparanda.measurement.PersonId;
import org.comparanda.statistics.Outcome;

/**
 * Who may do what: for each person and right the latest row holds. While nobody is keeper, a person
 * may make themselves keeper; afterwards keepers alone give and withdraw. The last keeper stays.
 *
 * @param grants all of them, oldest first
 */
public record Rights(List<Grant> grants) {
  public Rights {
    grants = List.copyOf(grants);
  }

  /** Whether the person has the right now. */
  public boolean holds(PersonId person, Right right) {
    return holders(right).contains(person);
  }

  /** Everyone who has the right now. */
  public Set<PersonId> holders(Right right) {
    Map<PersonId, Grant.Kind> latest = new LinkedHashMap<>();
    grants.stream().filter(g -> g.right() == right).forEach(g -> latest.put(g.person(), g.kind()));
    return latest.entrySet().stream()
        .filter(e -> e.getValue() == Grant.Kind.GIVEN)
        .map(Map.Entry::getKey)
        .collect(Collectors.toUnmodifiableSet());
  }

  /** Why this grant can't be; empty when it can. */
  public Optional<String> refusal(Grant next) {
    Set<PersonId> keepers = holders(Right.KEEPER);
    boolean firstKeeper =
        keepers.isEmpty()
            && next.right() == Right.KEEPER
            && next.kind() == Grant.Kind.GIVEN
            && next.person().equals(next.by());
    if (!firstKeeper && !keepers.contains(next.by())) {
      return Optional.of(
          keepers.isEmpty()
              ? "Nobody is keeper yet, so only the right keeper can be given, by its holder."
              : "\"" + next.by().value() + "\" is no keeper, and keepers alone give rights.");
    }
    boolean lastKeeper =
        next.kind() == Grant.Kind.WITHDRAWN
            && next.right() == Right.KEEPER
            && keepers.equals(Set.of(next.person()));
    return lastKeeper
        ? Optional.of("\"" + next.person().value() + "\" is the last keeper.")
        : Optional.empty();
  }

  /** The person, if they have the right; else why what was asked can't be done. */
  public Outcome<PersonId> asked(PersonId person, Right right, String what) {
    if (holds(person, right)) {
      return Outcome.of(person);
    }
    return Outcome.none(
        "\""
            + person.value()
            + "\" has not the right "
            + right.name().toLowerCase(java.util.Locale.ROOT)
            + ", so "
            + what
            + ".",
        holders(Right.KEEPER).isEmpty()
            ? "Nobody is keeper yet: name one by rights give PERSON keeper --by PERSON."
            : "Ask a keeper for it, or a person who has it.");
  }
}
