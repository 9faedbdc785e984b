package org.comparanda.tray;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.comparanda.bone.Portion;
import org.comparanda.measurement.BoneId;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.MeasurementCode;
import org.comparanda.statistics.Outcome;

/**
 * A bone in pieces that fit each other: one bone, one number. Its portion is what the pieces make
 * together; measurements whose jaws stand on two sides of a break are marked.
 *
 * @param bone the bone that they make
 * @param pieces the portion of each piece, at least two
 * @param across measurements that a person marked as crossing a break
 */
public record Refit(BoneId bone, List<Portion> pieces, Set<MeasurementCode> across) {
  public Refit {
    pieces = List.copyOf(pieces);
    across = java.util.Collections.unmodifiableSet(new TreeSet<>(across));
    if (pieces.size() < 2) {
      throw new IllegalArgumentException("Pieces that fit each other are at least two.");
    }
  }

  /**
   * What pieces make together: upper and lower end the whole bone, an end and shaft that end, else
   * what they are. Not possible for one piece, two upper or two lower ends, or a whole bone with
   * something more.
   */
  public static Outcome<Portion> joined(List<Portion> pieces) {
    long upper = pieces.stream().filter(p -> p == Portion.PROXIMAL).count();
    long lower = pieces.stream().filter(p -> p == Portion.DISTAL).count();
    if (pieces.size() < 2) {
      return Outcome.none(
          "One piece is no refit.", "Name the portion of each piece, two at least.");
    }
    if (upper > 1 || lower > 1 || pieces.contains(Portion.WHOLE)) {
      return Outcome.none(
          "These pieces can't be one bone: an end is there twice, or a piece is whole already.",
          "Give each bone its own number, or name the portions again.");
    }
    EnumSet<Portion> kinds = EnumSet.copyOf(pieces);
    if (upper == 1 && lower == 1) {
      return Outcome.of(Portion.WHOLE);
    }
    if (upper == 1) {
      return Outcome.of(Portion.PROXIMAL);
    }
    if (lower == 1) {
      return Outcome.of(Portion.DISTAL);
    }
    return Outcome.of(kinds.contains(Portion.SHAFT) ? Portion.SHAFT : Portion.OTHER);
  }

  /** The same pieces, this measurement marked, or no longer marked. */
  public Refit toggled(MeasurementCode code) {
    Set<MeasurementCode> other = new TreeSet<>(across);
    if (!other.remove(code)) {
      other.add(code);
    }
    return new Refit(bone, pieces, other);
  }

  /** Whether a measurement crosses a break: it was marked, or no single piece could carry it. */
  public boolean crosses(Measurement measurement) {
    boolean onNoPiece =
        !measurement.needs().isEmpty() && pieces.stream().noneMatch(measurement.needs()::contains);
    return onNoPiece || across.contains(measurement.code());
  }
}
