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
import org.comparanda.tray.ElementCall;
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

  /**
   * The bones that this person may look at: drawn, open, not called by them. First those that
   * nobody looked at again yet, then those of the every-nth draw that two people called and nobody
   * settled, for agreement among three; each in the order of the draw.
   */
  public List<Waiting> waitingFor(PersonId person) {
    List<Waiting> first = new ArrayList<>();
    List<Waiting> further = new ArrayList<>();
    Map<BoneId, List<Call>> calls = callsByBone();
    for (Draw draw : draws.all()) {
      CallHistory history = new CallHistory(calls.getOrDefault(draw.bone(), List.of()));
      boolean theirs = history.standing().stream().anyMatch(c -> c.person().equals(person));
      if (draw.why().isPresent() && history.first().isPresent() && !theirs) {
        Queued.Why why = draw.why().get();
        int looks = history.secondLooks().size();
        boolean third = looks == 1 && !why.targeted() && history.resolution().isEmpty();
        if (looks == 0 || third) {
          openBone(draw.bone())
              .ifPresent(bone -> (looks == 0 ? first : further).add(new Waiting(bone, why, looks)));
        }
      }
    }
    first.addAll(further);
    return first;
  }

  private Map<BoneId, List<Call>> callsByBone() {
    return trays.calls().stream().collect(Collectors.groupingBy(Call::bone));
  }

  private Optional<TrayBone> openBone(BoneId bone) {
    return trays.bone(bone).filter(b -> b.standing() == TrayBone.Standing.OPEN);
  }

  /**
   * Takes a second call. Refused for a bone that isn't drawn, for a person who called it already,
   * and for one who saw the suggestion.
   *
   * @param element which bone it is in the same person's eyes; stands beside, replaces nothing
   */
  public Outcome<Call> lookAgain(Call second, Optional<ElementCall> element) {
    return lookAgain(second)
        .then(
            recorded -> {
              element.ifPresent(said -> trays.record(said.ofLook(recorded.id())));
              return Outcome.of(recorded);
            });
  }

  /** The same without a word on the element. */
  public Outcome<Call> lookAgain(Call second) {
    CallHistory history = new CallHistory(trays.callsOn(second.bone()));
    boolean drawn =
        draws.all().stream().anyMatch(d -> d.bone().equals(second.bone()) && d.why().isPresent());
    boolean stopped = openBone(second.bone()).isEmpty();
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
    if (openBone(settled.bone()).isEmpty()) {
      return refused(settled, "is set aside as possibly human", "Leave it where it is.");
    }
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

  /**
   * All independent calls of every bone that was drawn and looked at again; those that were set
   * aside as possibly human are left out.
   */
  public List<ManyLooks> groups() {
    List<ManyLooks> looks = new ArrayList<>();
    Map<BoneId, List<Call>> byBone = callsByBone();
    for (Draw draw : draws.all()) {
      CallHistory history = new CallHistory(byBone.getOrDefault(draw.bone(), List.of()));
      Optional<Call> first = history.first();
      if (draw.why().isPresent()
          && first.isPresent()
          && !history.secondLooks().isEmpty()
          && openBone(draw.bone()).isPresent()) {
        List<Call> calls = new ArrayList<>(List.of(first.get()));
        calls.addAll(history.secondLooks());
        looks.add(new ManyLooks(calls, draw.why().get()));
      }
    }
    return looks;
  }
}
