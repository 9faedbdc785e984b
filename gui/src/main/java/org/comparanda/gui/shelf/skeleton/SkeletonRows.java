package org.comparanda.gui.shelf.skeleton;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.comparanda.bone.Side;
import org.comparanda.capture.Passes;
import org.comparanda.gui.capture.ReadingLine;
import org.comparanda.gui.capture.ReadingRow;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.MeasurementCode;

/**
 * The rows of an element, both sides beside each other.
 *
 * @param inHand side of the bone that is measured now
 * @param now where its measuring stands, a field gone to included
 */
record SkeletonRows(ElementBones bones, Side inHand, Passes now) {
  List<SkeletonRow> rows() {
    Beside first = beside(bones.sides().get(0));
    Optional<Beside> second =
        bones.sides().size() == 2 ? Optional.of(beside(Side.RIGHT)) : Optional.empty();
    return bones.room().keeper().protocol().of(bones.element().key()).stream()
        .map(m -> row(m, first, second))
        .toList();
  }

  /** A side; the card speaks for one that is not in hand and of which nothing was read. */
  private Beside beside(Side side) {
    Passes passes = side == inHand ? now : bones.passes(side);
    boolean silent = side != inHand && passes.untouched();
    return new Beside(passes, silent ? bones.recorded(side) : Map.of());
  }

  /**
   * One side.
   *
   * @param passes what was read of it
   * @param card the values of its card that stand for it, mm; none where the passes speak
   */
  private record Beside(Passes passes, Map<MeasurementCode, Double> card) {
    Optional<Double> fromCard(Measurement m) {
      return Optional.ofNullable(card.get(m.code()));
    }

    Optional<Double> done(Measurement m) {
      return passes.complete() ? Optional.ofNullable(passes.values().get(m.code())) : fromCard(m);
    }
  }

  private SkeletonRow row(Measurement m, Beside first, Optional<Beside> second) {
    Optional<Double> left = first.done(m);
    Optional<Double> right = second.flatMap(p -> p.done(m));
    SkeletonRow.Standing standing = SkeletonRow.Standing.NOT_COMPARED;
    String percent = "";
    if (left.isPresent() && right.isPresent()) {
      double longer = Math.max(left.get(), right.get());
      boolean differ = ElementBones.TOLERANCE.exceeds(left.get(), right.get());
      standing = differ ? SkeletonRow.Standing.DIFFER : SkeletonRow.Standing.AGREE;
      double part = 100 * Math.abs(left.get() - right.get()) / longer;
      percent = words().get("skeleton.percent", numbers().fixed(part, 1));
    }
    boolean waits = now.current().filter(p -> p.code().equals(m.code())).isPresent();
    return new SkeletonRow(
        line(first, m),
        second.map(p -> line(p, m)),
        percent,
        standing,
        waits ? Optional.of(inHand) : Optional.empty());
  }

  /** What was read of a side; where nothing was, what the card has of it. */
  private ReadingRow line(Beside side, Measurement m) {
    ReadingRow read =
        new ReadingLine(side.passes(), m, bones.room().reading().words(), numbers()).row();
    return side.fromCard(m)
        .map(mm -> read.withKept(words().get("skeleton.from.card", numbers().upTo(mm, 2))))
        .orElse(read);
  }

  private Words words() {
    return bones.room().words();
  }

  private Numbers numbers() {
    return bones.room().reading().numbers();
  }
}
