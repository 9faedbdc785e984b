package org.comparanda.gui.bench;

import java.util.Optional;
import org.comparanda.gui.control.falling.FallingPicture;
import org.comparanda.gui.control.falling.FallingPrint;
import org.comparanda.gui.control.outline.BoneSketch;
import org.comparanda.measurement.Measurement;

/** What is drawn of the bone in hand: its outline with the jaws, and the picture for print. */
record Drawings(BenchPlace place, BenchViewModel bench) {
  /** The drawing of the bone in hand, with the jaws at the measurement that waits. */
  Optional<BoneSketch> sketch() {
    Optional<Measurement> taken = bench.readings().currentProperty().get();
    String text = bench.readings().fieldProperty().get().text();
    String label =
        text.isBlank() ? taken.map(m -> m.code().value()).orElse("") : text.strip() + " mm";
    return bench
        .boneProperty()
        .get()
        .map(
            b ->
                new SketchOf(place.outlines())
                    .of(b.element(), b.portion(), taken, label)
                    .orElseGet(() -> SketchOf.notDrawn(place.words().get("outline.none"))));
  }

  /** The falling line with its answer, for print; empty while there is no picture. */
  Optional<FallingPrint> print(String note) {
    FallingPicture picture = bench.pictureProperty().get();
    return bench
        .findingProperty()
        .get()
        .filter(f -> !picture.rows().isEmpty())
        .map(f -> PictureOf.print(f, picture, note));
  }
}
