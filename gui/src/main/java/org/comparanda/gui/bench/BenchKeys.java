package org.comparanda.gui.bench;

import org.comparanda.capture.Errand;
import org.comparanda.gui.capture.Beyond;

/** What keys in the reading field mean for the rest of the bench. */
record BenchKeys(BenchViewModel bench) implements Beyond {
  @Override
  public void changed() {
    bench.reckon();
  }

  @Override
  public void recorded() {
    bench.sides().next();
  }

  @Override
  public boolean undoneElsewhere() {
    bench.sides().beforeUndo();
    boolean nothingRead = bench.readings().untouched();
    if (nothingRead) {
      bench.askStateAnew();
    }
    return nothingRead;
  }

  @Override
  public void recordCall() {
    bench.call().record();
  }

  @Override
  public void run(Errand errand) {
    bench.run(errand);
  }

  @Override
  public void listErrands() {
    bench.errands().list();
  }

  @Override
  public void answer(String text) {
    bench.errands().answer(text);
  }

  @Override
  public void stop() {
    bench.setAside();
  }
}
