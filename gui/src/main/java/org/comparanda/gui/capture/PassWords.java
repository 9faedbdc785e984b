package org.comparanda.gui.capture;

import java.util.List;
import org.comparanda.capture.Passes;
import org.comparanda.capture.Place;

/** Where a bone's passes stand, in rows and words. */
record PassWords(ReadingPlace place, Passes passes) {
  /** One row per measurement of the element, in protocol order. */
  List<ReadingRow> rows() {
    return place.protocol().of(passes.element()).stream()
        .map(m -> new ReadingLine(passes, m, place.words(), place.numbers()).row())
        .toList();
  }

  /** What the person should know at this place; mostly empty. */
  String notice() {
    if (passes.measurements().isEmpty()) {
      return place.words().get("nothing.to.measure");
    }
    if (passes.boneDown()) {
      return place.words().get("bone.down", passes.current().map(Place::pass).orElse(1));
    }
    boolean over = passes.current().isEmpty() && !passes.values().isEmpty();
    return over ? place.words().get("passes.over") : "";
  }
}
