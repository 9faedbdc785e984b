package org.comparanda.gui.shelf.skeleton;

import java.util.List;
import java.util.Optional;
import org.comparanda.bone.Side;
import org.comparanda.capture.Passes;
import org.comparanda.gui.capture.ReadingLine;
import org.comparanda.gui.capture.ReadingRow;
import org.comparanda.gui.text.Numbers;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.Measurement;

/**
 * The rows of an element, both sides beside each other.
 *
 * @param inHand side of the bone that is measured now
 * @param now where its measuring stands, a field gone to included
 */
record SkeletonRows(ElementBones bones, Side inHand, Passes now) {
  List<SkeletonRow> rows() {
    Passes first = passes(bones.sides().get(0));
    Optional<Passes> second =
        bones.sides().size() == 2 ? Optional.of(passes(Side.RIGHT)) : Optional.empty();
    return bones.room().keeper().protocol().of(bones.element().key()).stream()
        .map(m -> row(m, first, second))
        .toList();
  }

  private Passes passes(Side side) {
    return side == inHand ? now : bones.passes(side);
  }

  private SkeletonRow row(Measurement m, Passes first, Optional<Passes> second) {
    Optional<Double> left = done(bones.sides().get(0), first, m);
    Optional<Double> right = second.flatMap(p -> done(Side.RIGHT, p, m));
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
        line(bones.sides().get(0), first, m),
        second.map(p -> line(Side.RIGHT, p, m)),
        percent,
        standing,
        waits ? Optional.of(inHand) : Optional.empty());
  }

  /** What was read of a side; where nothing was, what the card has of it. */
  private ReadingRow line(Side side, Passes passes, Measurement m) {
    ReadingRow read = new ReadingLine(passes, m, bones.room().reading().words(), numbers()).row();
    return fromCard(side, passes, m)
        .map(mm -> read.withKept(words().get("skeleton.from.card", numbers().upTo(mm, 2))))
        .orElse(read);
  }

  private Optional<Double> done(Side side, Passes passes, Measurement m) {
    return passes.complete()
        ? Optional.ofNullable(passes.values().get(m.code()))
        : fromCard(side, passes, m);
  }

  /** The value on the card, of a side that is not in hand and of which nothing was read. */
  private Optional<Double> fromCard(Side side, Passes passes, Measurement m) {
    return side == inHand || !passes.untouched()
        ? Optional.empty()
        : bones.onCard(side).flatMap(bone -> Optional.ofNullable(bone.values().get(m.code())));
  }

  private Words words() {
    return bones.room().words();
  }

  private Numbers numbers() {
    return bones.room().reading().numbers();
  }
}
