package org.comparanda.gui.capture;

import java.util.List;
import java.util.Optional;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.gui.control.outline.BoneSketch;
import org.comparanda.gui.text.Words;
import org.comparanda.measurement.Measurement;
import org.comparanda.measurement.Outline;

/** Makes the drawing of a bone in hand: its view, what is missing, the jaws. */
public record SketchOf(List<Outline> outlines) {
  /** Stands for a bone that nobody has drawn yet: no bone's shape, and it says so. */
  private static final String NO_BONE =
      "M20 50 C20 30 34 20 54 20 C76 20 92 30 92 50 C92 72 76 82 54 82 C34 82 20 72 20 50 Z";

  public SketchOf {
    outlines = List.copyOf(outlines);
  }

  /** The first view of an element; empty where it is not drawn yet. */
  public Optional<BoneSketch> drawn(ElementKey element, Portion portion) {
    return of(element, portion, Optional.empty(), "");
  }

  /** What is shown where an element is not drawn yet. */
  static BoneSketch notDrawn(String caption) {
    BoneSketch.Box box = new BoneSketch.Box(10, 10, 92, 82);
    return new BoneSketch(box, NO_BONE, List.of(), List.of(box), Optional.empty(), caption);
  }

  /** The drawing of a bone that is being measured, what is typed at its jaws. */
  public BoneSketch measured(
      ReadingsViewModel readings, ElementKey element, Portion portion, Words words) {
    Optional<Measurement> taken = readings.currentProperty().get();
    String text = readings.fieldProperty().get().text();
    String label =
        text.isBlank() ? taken.map(m -> m.code().value()).orElse("") : text.strip() + " mm";
    return of(element, portion, taken, label).orElseGet(() -> notDrawn(words.get("outline.none")));
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
