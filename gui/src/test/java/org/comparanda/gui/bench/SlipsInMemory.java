package org.comparanda.gui.bench;

import java.nio.file.Path;
import java.util.List;
import org.comparanda.measurement.BoneId;

/**
 * Slips without a folder.
 *
 * @param printed numbers of the bones whose slips were asked for
 */
record SlipsInMemory(List<String> printed) implements SlipDesk {
  @Override
  public Path slip(BoneId bone) {
    printed.add(bone.value());
    return Path.of(bone.value() + ".pdf");
  }

  @Override
  public Path keyCard() {
    return Path.of("keys.pdf");
  }
}
