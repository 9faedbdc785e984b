package org.comparanda.tray;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.comparanda.statistics.DaysToFinish;
import org.comparanda.statistics.DaysToFinish.Forecast;
import org.comparanda.statistics.Outcome;

/**
 * How far a lot has come. A bone is done with its first call that stands; one set aside as possibly
 * human is neither done nor left.
 *
 * @param bones on all trays of the lot
 * @param called of them
 * @param stopped of them, set aside as possibly human
 * @param perDay bones first called on each working day
 */
public record LotProgress(
    String lot, int bones, int called, int stopped, Map<LocalDate, Integer> perDay) {
  private static final long SEED = 20_417;

  public LotProgress {
    perDay = Map.copyOf(perDay);
  }

  /** The progress of a lot now; days are those of the zone. */
  public static LotProgress of(String lot, Trays trays, ZoneId zone) {
    int bones = 0;
    int called = 0;
    int stopped = 0;
    Map<LocalDate, Integer> perDay = new TreeMap<>();
    for (Tray tray : trays.all()) {
      List<TrayBone> here = tray.lot().equals(lot) ? trays.bonesOf(tray.id()) : List.of();
      for (TrayBone bone : here) {
        bones++;
        if (bone.standing() == TrayBone.Standing.STOPPED) {
          stopped++;
          continue;
        }
        Optional<Call> first = new CallHistory(trays.callsOn(bone.id())).first();
        if (first.isPresent()) {
          called++;
          perDay.merge(LocalDate.ofInstant(first.get().at(), zone), 1, Integer::sum);
        }
      }
    }
    return new LotProgress(lot, bones, called, stopped, perDay);
  }

  /** Bones that wait for a call. */
  public int left() {
    return bones - called - stopped;
  }

  /** Working days to the last bone, from the days of this lot alone. */
  public Outcome<Forecast> forecast() {
    return DaysToFinish.of(new TreeMap<>(perDay).values().stream().toList(), left(), SEED);
  }
}
