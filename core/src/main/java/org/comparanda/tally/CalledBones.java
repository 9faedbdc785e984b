package org.comparanda.tally;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.comparanda.taxon.TaxonName;
import org.comparanda.taxon.TaxonTree;
import org.comparanda.tray.Call;
import org.comparanda.tray.CallHistory;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.Trays;

/**
 * The bones of some lots as tallies take them: each by the call that holds, cf., aff. and ? counted
 * as the taxon they stand with. Practice bones, bones set aside as possibly human and bones without
 * a call are not counted.
 *
 * @param rows one per bone, its place being the tray's provenance as recorded
 * @param notCalled bones without a call
 * @param refusal why these lots can't be counted together; empty when they can
 */
public record CalledBones(List<TallyRow> rows, int notCalled, Optional<String> refusal) {
  public CalledBones {
    rows = List.copyOf(rows);
  }

  /**
   * The bones of these lots; of all when none is named. A bone counts under the name that its taxon
   * has now, whichever its call was written with.
   */
  public static CalledBones of(Trays trays, List<String> lots, TaxonTree tree) {
    List<TallyRow> rows = new ArrayList<>();
    Set<String> lotsFound = new TreeSet<>();
    Set<String> places = new TreeSet<>();
    int notCalled = 0;
    for (Tray tray : trays.all()) {
      if (!lots.isEmpty() && !lots.contains(tray.lot())) {
        continue;
      }
      lotsFound.add(tray.lot());
      places.add(tray.provenance());
      for (TrayBone bone : trays.bonesOf(tray.id())) {
        if (bone.standing() == TrayBone.Standing.STOPPED || bone.animal().isPresent()) {
          continue;
        }
        Optional<Call> holding = new CallHistory(trays.callsOn(bone.id())).holding();
        if (holding.isEmpty()) {
          notCalled++;
        } else {
          rows.add(row(tray, bone, tree.accepted(holding.get().taxon())));
        }
      }
    }
    return new CalledBones(rows, notCalled, refusal(lots, lotsFound, places));
  }

  /** How many bones are counted and how many not. */
  public String sentence() {
    return "Counted by the call that holds: "
        + rows.size()
        + " bones; without a call and not counted: "
        + notCalled
        + ".";
  }

  private static TallyRow row(Tray tray, TrayBone bone, TaxonName taxon) {
    return new TallyRow(tray.provenance(), taxon, bone.element(), bone.side(), bone.portion(), 1);
  }

  private static Optional<String> refusal(
      List<String> asked, Set<String> found, Set<String> places) {
    List<String> missing = asked.stream().filter(lot -> !found.contains(lot)).toList();
    if (!missing.isEmpty()) {
      return Optional.of(
          "There is no lot \""
              + missing.get(0)
              + "\". Nothing was counted. The lots are: "
              + String.join(", ", found)
              + ".");
    }
    if (found.size() > 1 && (places.size() > 1 || places.contains(""))) {
      return Optional.of(
          "The lots "
              + String.join(", ", found)
              + " have no recorded place in common, so the smallest number of animals behind them"
              + " all can't be told: one animal may lie in two of them, or none. Nothing was"
              + " counted. Count one lot at a time by --lot.");
    }
    return Optional.empty();
  }
}
