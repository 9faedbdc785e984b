package org.comparanda.gui.app;

import java.util.function.Function;
import java.util.function.Supplier;
import org.comparanda.register.Names;
import org.comparanda.taxon.TaxonTree;

/** The taxa as the house names them now: those of the program with its own; one for all screens. */
public final class HouseTaxa implements Supplier<TaxonTree> {
  private final Names names;
  private final TaxonTree shipped;
  private volatile TaxonTree now;

  /** Reads the names for the first time. */
  public HouseTaxa(Names names, TaxonTree shipped) {
    this.names = names;
    this.shipped = shipped;
    this.now = read(names, shipped);
  }

  private static TaxonTree read(Names names, TaxonTree shipped) {
    return names.all().on(shipped).value().orElse(shipped);
  }

  /** Reads the names again, after some were changed. */
  public void again() {
    now = read(names, shipped);
  }

  /** The same tree until names were changed. */
  @Override
  public TaxonTree get() {
    return now;
  }

  /** Something made of the taxa, made anew as soon as they are others. */
  public <T> Supplier<T> following(Function<TaxonTree, T> maker) {
    return new Following<>(this, maker);
  }

  /** Made of one tree, until there is another. */
  private static final class Following<T> implements Supplier<T> {
    private final HouseTaxa taxa;
    private final Function<TaxonTree, T> maker;
    private volatile Made<T> last;

    Following(HouseTaxa taxa, Function<TaxonTree, T> maker) {
      this.taxa = taxa;
      this.maker = maker;
      this.last = Made.of(taxa.get(), maker);
    }

    @Override
    public T get() {
      TaxonTree tree = taxa.get();
      Made<T> made = last;
      if (made.from() != tree) {
        made = Made.of(tree, maker);
        last = made;
      }
      return made.what();
    }
  }

  private record Made<T>(TaxonTree from, T what) {
    static <T> Made<T> of(TaxonTree tree, Function<TaxonTree, T> maker) {
      return new Made<>(tree, maker.apply(tree));
    }
  }
}
