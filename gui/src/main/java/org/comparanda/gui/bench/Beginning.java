package org.comparanda.gui.bench;

import java.util.Optional;
import org.comparanda.capture.Draft;
import org.comparanda.tray.TrayBone;

/**
 * The first things after the program was started: read the shelf, take up what lay open. Later the
 * shelf is read again where it changed meanwhile.
 */
record Beginning(BenchPlace place, BenchViewModel bench, TrayViewModel tray) {
  /** Reads the shelf off the window's thread; the bench asks nothing of it before. */
  void readShelf(AnswerViewModel answer) {
    Advice read = read();
    place
        .ui()
        .execute(
            () -> {
              answer.ready(read);
              if (bench.boneProperty().get().isPresent()) {
                bench.remeasure();
              } else {
                place.drafts().of(BenchPlace.BENCH).ifPresent(this::resume);
              }
            });
  }

  private Advice read() {
    return new Advice(
        place.animals().shelf(),
        place.protocol(),
        place.tree(),
        place.books().rules().inForce(),
        place.numbers().locale());
  }

  /** Reads the shelf, the names and the rules again; the answer follows where they are others. */
  void readAgain(AnswerViewModel answer) {
    Advice now = read();
    place
        .ui()
        .execute(
            () -> {
              if (answer.ready(now)) {
                bench.reckon();
              }
            });
  }

  /** Takes up again what lay open when the program ended. */
  private void resume(Draft left) {
    Optional<TrayBone> open =
        place.trays().bone(left.bone()).filter(b -> b.standing() == TrayBone.Standing.OPEN);
    open.ifPresent(
        b ->
            tray.trayOf(b)
                .ifPresent(
                    t -> {
                      tray.bring(t);
                      bench.choose(b);
                      bench.readings().resume(left);
                    }));
  }
}
