package org.comparanda.tray;

import java.util.Optional;
import org.comparanda.statistics.Outcome;
import org.comparanda.taxon.TaxonTree;

/**
 * Takes calls by the rules of the room: none on a bone that may be human, none against the
 * suggestion without one line of why.
 */
public final class CallDesk {
  private final Trays trays;
  private final TaxonTree tree;

  public CallDesk(Trays trays, TaxonTree tree) {
    this.trays = trays;
    this.tree = tree;
  }

  /** Records the call, or says why not; nothing is then stored. */
  public Outcome<Call> record(Call call, Beside beside) {
    if (beside.against(call.taxon(), tree) && call.grounds().why().isBlank()) {
      return recordable(call)
          .then(
              sound ->
                  Outcome.none(
                      call.taxon() + " goes against what the numbers say. Nothing was recorded.",
                      "Say in one line why (what you saw on the bone), and record it again."));
    }
    return recordFirst(call, beside);
  }

  /**
   * Records a call that was made before what the numbers say was shown: no why is asked for, since
   * that would tell; what they said is kept beside it.
   */
  public Outcome<Call> recordFirst(Call call, Beside beside) {
    return recordable(call).then(sound -> Outcome.of(trays.record(sound, beside)));
  }

  private Outcome<Call> recordable(Call call) {
    Optional<TrayBone> bone = trays.bone(call.bone());
    if (bone.isEmpty()) {
      return Outcome.none(
          "There is no bone \"" + call.bone() + "\" on a tray. Nothing was recorded.",
          "Check the number.");
    }
    if (bone.get().standing() == TrayBone.Standing.STOPPED) {
      return Outcome.none(
          call.bone() + " is set aside as possibly human. Nothing was recorded.",
          "Only the person responsible may open it again.");
    }
    return Outcome.of(call);
  }

  /** Takes a call back by a row of its own; refused where it is none of this bone's that stand. */
  public Outcome<Call> withdraw(Call call, Call withdrawal) {
    boolean stands =
        new CallHistory(trays.callsOn(call.bone()))
            .standing().stream().anyMatch(c -> c.id() == call.id());
    if (!stands) {
      return Outcome.none(
          "Call " + call.id() + " was taken back already, or is not there. Nothing was changed.",
          "Look at the history of the bone.");
    }
    return Outcome.of(
        trays.record(withdrawal.as(Call.Kind.WITHDRAWAL, call.id()), Beside.nothing()));
  }
}
