package org.comparanda.gui.bench;

import java.util.List;
import java.util.Optional;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.gui.control.outline.BoneSketch;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.Outline;

/** Makes the drawing of a bone in hand: its view, what is missing, the jaws. */
record SketchOf(List<Outline> outlines) {
  SketchOf {
    outlines = List.copyOf(outlines);
  }

  /** The view that shows the measurement; the first one where none is being taken. */
  Optional<BoneSketch> of(
      ElementKey element, Portion portion, Optional<Measurement> taken, String label) {
    return outlines.stream()
        .filter(o -> o.element().equals(element))
        .findFirst()
        .flatMap(o -> sketch(o, portion, taken, label));
  }

  private static Optional<BoneSketch> sketch(
      Outline outline, Portion portion, Optional<Measurement> taken, String label) {
    Optional<Measurement.Landmarks> marks = taken.flatMap(Measurement::landmarks);
    return marks
        .flatMap(outline::viewOf)
        .or(() -> outline.views().stream().findFirst())
        .map(
            view ->
                new BoneSketch(
                    box(view.box()),
                    view.edge(),
                    view.lines(),
                    missing(view, portion),
                    marks.map(m -> new BoneSketch.Jaws(m.x1(), m.y1(), m.x2(), m.y2(), label)),
                    view.caption()));
  }

  /** The bands of what is not in hand; nothing is known of portion "other". */
  private static List<BoneSketch.Box> missing(Outline.View view, Portion portion) {
    if (portion == Portion.WHOLE || portion == Portion.OTHER) {
      return List.of();
    }
    return view.bands().stream()
        .filter(band -> band.portion() != portion)
        .map(band -> box(band.box()))
        .toList();
  }

  private static BoneSketch.Box box(Outline.Box b) {
    return new BoneSketch.Box(b.x(), b.y(), b.width(), b.height());
  }
}
