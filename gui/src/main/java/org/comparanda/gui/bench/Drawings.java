package org.comparanda.gui.bench;

import java.util.Optional;
import org.comparanda.gui.capture.SketchOf;
import org.comparanda.gui.control.falling.FallingPicture;
import org.comparanda.gui.control.falling.FallingPrint;
import org.comparanda.gui.control.outline.BoneSketch;

/** What is drawn of the bone in hand: its outline with the jaws, and the picture for print. */
record Drawings(BenchPlace place, BenchViewModel bench) {
  /** The drawing of the bone in hand, with the jaws at the measurement that waits. */
  Optional<BoneSketch> sketch() {
    return bench
        .boneProperty()
        .get()
        .map(
            b ->
                new SketchOf(place.outlines())
                    .measured(bench.readings(), b.element(), b.portion(), place.words()));
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
