package org.comparanda.suggestion;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** A value that is reckoned when it is first asked for, and only then; safe for many threads. */
final class Once<T> {
  private final Supplier<T> supplier;
  private final List<T> known = new ArrayList<>(1);

  Once(Supplier<T> supplier) {
    this.supplier = supplier;
  }

  synchronized T get() {
    if (known.isEmpty()) {
      known.add(supplier.get());
    }
    return known.get(0);
  }
}
