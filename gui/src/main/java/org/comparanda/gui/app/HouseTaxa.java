package org.comparanda.gui.app;

import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import java.util.function.Supplier;
import org.comparanda.register.Names;
import org.comparanda.taxon.TaxonTree;

/** The taxa as the house names them now: those of the program with its own; one for all screens. */
public final class HouseTaxa implements Supplier<TaxonTree> {
  private final Names names;
  private final TaxonTree shipped;
  private final AtomicReference<TaxonTree> now;

  /** Reads the names for the first time. */
  public HouseTaxa(Names names, TaxonTree shipped) {
    this.names = names;
    this.shipped = shipped;
    this.now = new AtomicReference<>(read());
  }

  private TaxonTree read() {
    return names.all().on(shipped).value().orElse(shipped);
  }

  /** Reads the names again, after some were changed. */
  public void again() {
    now.set(read());
  }

  /** The same tree until names were changed. */
  @Override
  public TaxonTree get() {
    return now.get();
  }

  /** Something made of the taxa, made anew as soon as they are others. */
  public <T> Supplier<T> following(Function<TaxonTree, T> maker) {
    AtomicReference<Made<T>> last = new AtomicReference<>();
    return () ->
        last.updateAndGet(
                made -> {
                  TaxonTree tree = get();
                  return made != null && made.of() == tree
                      ? made
                      : new Made<>(tree, maker.apply(tree));
                })
            .what();
  }

  private record Made<T>(TaxonTree of, T what) {}
}
