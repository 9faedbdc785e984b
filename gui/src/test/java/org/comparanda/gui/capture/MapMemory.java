package org.comparanda.gui.capture;

import java.util.Map;
import java.util.Optional;

/** What a computer remembers, without a computer. */
public record MapMemory(Map<String, String> kept) implements Memory {
  @Override
  public Optional<String> recall(String key) {
    return Optional.ofNullable(kept.get(key)).filter(value -> !value.isBlank());
  }

  @Override
  public void remember(String key, String value) {
    kept.put(key, value);
  }
}
