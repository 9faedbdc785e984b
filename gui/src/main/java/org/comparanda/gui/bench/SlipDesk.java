package org.comparanda.gui.bench;

import java.nio.file.Path;
import org.comparanda.measurement.BoneId;

/** Where slips are printed. */
public interface SlipDesk {
  /**
   * Writes the slip of a bone and gives the file. Errors: {@link java.io.UncheckedIOException} if
   * it can't be written.
   */
  Path slip(BoneId bone);

  /** Writes the page with all keys and gives the file; errors as above. */
  Path keyCard();
}
