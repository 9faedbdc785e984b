package org.comparanda.dossier;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.comparanda.capture.Takes;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.measurement.Reading;
import org.comparanda.measurement.ReadingLog;
import org.comparanda.reference.BoneInHand;
import org.comparanda.tray.Call;
import org.comparanda.tray.CallHistory;
import org.comparanda.tray.Tray;
import org.comparanda.tray.TrayBone;
import org.comparanda.tray.Trays;

/**
 * All that is recorded of one bone.
 *
 * @param tray the tray it lies on
 * @param bone what it is
 * @param calls all rows of calls, oldest first
 * @param log all rows of readings, withdrawn ones included, in the order they were taken
 */
public record Dossier(Tray tray, TrayBone bone, List<Call> calls, List<Reading> log) {
  public Dossier {
    calls = List.copyOf(calls);
    log = List.copyOf(log);
  }

  /** The bones of a tray, in the order they were added. */
  public static List<Dossier> of(Tray tray, Trays trays, ReadingLog readings) {
    List<Dossier> all = new ArrayList<>();
    for (TrayBone bone : trays.bonesOf(tray.id())) {
      all.add(new Dossier(tray, bone, trays.callsOn(bone.id()), readings.of(bone.id())));
    }
    return all;
  }

  /** The bones of these lots, of all when none is named, tray by tray. */
  public static List<Dossier> ofLots(List<String> lots, Trays trays, ReadingLog readings) {
    return trays.all().stream()
        .filter(tray -> lots.isEmpty() || lots.contains(tray.lot()))
        .flatMap(tray -> of(tray, trays, readings).stream())
        .toList();
  }

  /** The call that holds now: not taken back, and no second look that was not resolved so. */
  public Optional<Call> latestCall() {
    return new CallHistory(calls).holding();
  }

  /** The readings that count: neither withdrawn nor replaced, with a length. */
  public List<Reading> counted() {
    return takes().rows().stream().filter(row -> row.length().isPresent()).toList();
  }

  /** Mean of two or median of more takes, mm. */
  public Map<MeasurementCode, Double> values() {
    Takes takes = takes();
    Map<MeasurementCode, Double> values = new TreeMap<>();
    counted().forEach(r -> takes.value(r.code()).ifPresent(mm -> values.put(r.code(), mm)));
    return values;
  }

  /** The bone as the Bench compares it. */
  public BoneInHand inHand() {
    return new BoneInHand(
        bone.id().value(),
        bone.animal(),
        bone.element(),
        bone.side(),
        bone.portion(),
        bone.state(),
        values());
  }

  private Takes takes() {
    return Takes.of(bone.element(), log);
  }
}
