package org.comparanda.secondlook;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.PersonId;
import org.comparanda.statistics.Outcome;
import org.comparanda.taxon.TaxonName;
import org.comparanda.tray.Beside;
import org.comparanda.tray.Call;
import org.comparanda.tray.CallHistory;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.Trays;

/**
 * Draws bones for a second look, takes second calls blind, and resolves what two people see
 * differently. A second call replaces nothing; only a third person's call or a consensus holds from
 * then on.
 */
public final class LookDesk {
  private final Trays trays;
  private final Draws draws;
  private final Queue rule;

  public LookDesk(Trays trays, Draws draws, Queue rule) {
    this.trays = trays;
    this.draws = draws;
    this.rule = rule;
  }

  /** Decides on every first call that was not decided on yet, by the rule as it is now. */
  public void bringUpToDate() {
    List<Draw> before = draws.all();
    List<Call> calls = trays.calls();
    Map<Long, Call> byId = calls.stream().collect(Collectors.toMap(Call::id, Function.identity()));
    Set<BoneId> decided = before.stream().map(Draw::bone).collect(Collectors.toSet());
    Set<TaxonName> seen =
        before.stream()
            .flatMap(d -> Optional.ofNullable(byId.get(d.call())).stream())
            .map(Call::taxon)
            .collect(Collectors.toCollection(HashSet::new));
    List<Draw> next = new ArrayList<>();
    for (Call call : calls) {
      if (call.kind() == Call.Kind.CALL && decided.add(call.bone())) {
        int position = before.size() + next.size() + 1;
        next.add(
            new Draw(
                position,
                call.id(),
                call.bone(),
                rule.why(position, look(call), seen),
                rule.inWords()));
        seen.add(call.taxon());
      }
    }
    draws.append(next);
  }

  private FirstLook look(Call call) {
    Beside beside = trays.beside(call);
    return new FirstLook(
        call,
        beside.named().size() == 1 ? Optional.of(beside.named().get(0)) : Optional.empty(),
        beside.typicality());
  }

  /** The bones that wait for this person: drawn, not yet looked at again, not their own call. */
  public List<TrayBone> waitingFor(PersonId person) {
    List<TrayBone> waiting = new ArrayList<>();
    for (Draw draw : draws.all()) {
      Optional<TrayBone> bone = trays.bone(draw.bone());
      CallHistory history = new CallHistory(trays.callsOn(draw.bone()));
      boolean mayLook =
          draw.why().isPresent()
              && bone.filter(b -> b.standing() == TrayBone.Standing.OPEN).isPresent()
              && history.first().isPresent()
              && history.secondLooks().isEmpty()
              && history.standing().stream().noneMatch(c -> c.person().equals(person));
      if (mayLook) {
        waiting.add(bone.orElseThrow());
      }
    }
    return waiting;
  }

  /**
   * Takes a second call. Refused for a bone that isn't drawn, for a person who called it already,
   * and for one who saw the suggestion.
   */
  public Outcome<Call> lookAgain(Call second) {
    CallHistory history = new CallHistory(trays.callsOn(second.bone()));
    boolean drawn =
        draws.all().stream().anyMatch(d -> d.bone().equals(second.bone()) && d.why().isPresent());
    boolean stopped =
        trays.bone(second.bone()).filter(b -> b.standing() == TrayBone.Standing.OPEN).isEmpty();
    Optional<Call> first = history.first();
    if (!drawn || stopped || first.isEmpty()) {
      return refused(second, "is not waiting for a second look", "Look at second-look list.");
    }
    if (history.standing().stream().anyMatch(c -> c.person().equals(second.person()))) {
      return refused(
          second, "was called by this person already", "A second look needs another person.");
    }
    if (second.sawSuggestion()) {
      return refused(
          second,
          "can't be looked at again by someone who saw the suggestion",
          "Let another person look, who saw neither call nor suggestion.");
    }
    return Outcome.of(
        trays.record(second.as(Call.Kind.SECOND_LOOK, first.get().id()), Beside.nothing()));
  }

  /**
   * Settles a bone that was looked at again: by a third person, or by one of the two after they
   * agreed. The call holds from then on.
   */
  public Outcome<Call> resolve(Call settled, Call.Kind how) {
    CallHistory history = new CallHistory(trays.callsOn(settled.bone()));
    Optional<Call> first = history.first();
    if (first.isEmpty() || history.secondLooks().isEmpty()) {
      return refused(settled, "was not looked at again yet", "Look at second-look list.");
    }
    boolean among =
        history.standing().stream()
            .filter(c -> c.kind() == Call.Kind.CALL || c.kind() == Call.Kind.SECOND_LOOK)
            .anyMatch(c -> c.person().equals(settled.person()));
    if (how == Call.Kind.THIRD_PERSON && among) {
      return refused(settled, "was called by this person already", "A third person settles it.");
    }
    if (how == Call.Kind.CONSENSUS && !among) {
      return refused(
          settled,
          "was called by other people",
          "A consensus is recorded by one of them; another person is a third person.");
    }
    return Outcome.of(trays.record(settled.as(how, first.get().id()), Beside.nothing()));
  }

  private static <T> Outcome<T> refused(Call call, String why, String remedy) {
    return Outcome.none("Bone " + call.bone() + " " + why + ". Nothing was recorded.", remedy);
  }

  /** First and second call of every bone that was drawn and looked at again. */
  public List<TwoLooks> looks() {
    return groups().stream()
        .map(g -> new TwoLooks(g.calls().get(0), g.calls().get(1), g.why()))
        .toList();
  }

  /** All independent calls of every bone that was drawn and looked at again. */
  public List<ManyLooks> groups() {
    List<ManyLooks> looks = new ArrayList<>();
    for (Draw draw : draws.all()) {
      CallHistory history = new CallHistory(trays.callsOn(draw.bone()));
      Optional<Call> first = history.first();
      if (draw.why().isPresent() && first.isPresent() && !history.secondLooks().isEmpty()) {
        List<Call> calls = new ArrayList<>(List.of(first.get()));
        calls.addAll(history.secondLooks());
        looks.add(new ManyLooks(calls, draw.why().get()));
      }
    }
    return looks;
  }
}
