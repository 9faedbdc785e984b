package org.comparanda.gui.capture;

import java.util.Optional;
import org.comparanda.capture.Draft;
import org.comparanda.capture.Drafts;
import org.comparanda.capture.Passes;

/** Keeps which field lies open on a bench and its half-typed text, so that both come back. */
record OpenField(String bench, Drafts drafts) {
  void keep(Passes passes, String text) {
    passes
        .current()
        .ifPresent(
            place -> drafts.save(bench, new Draft(passes.bone(), passes.element(), place, text)));
  }

  /** What was left, if it still has a place in these passes of this bone. */
  Optional<Draft> fitting(Passes passes, Draft left) {
    boolean sameBone = passes.bone().equals(left.bone()) && passes.element().equals(left.element());
    boolean samePass =
        passes.current().filter(place -> place.pass() == left.place().pass()).isPresent();
    return sameBone && samePass ? Optional.of(left) : Optional.empty();
  }

  void clear() {
    drafts.clear(bench);
  }
}
