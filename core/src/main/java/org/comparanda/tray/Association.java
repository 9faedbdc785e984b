package org.comparanda.tray;

import java.util.List;
import org.comparanda.measurement.BoneId;

/**
 * Bones found together, taken to be of one animal.
 *
 * @param id running number in its collection
 * @param bones at least two, by number
 */
public record Association(long id, List<BoneId> bones) {
  public Association {
    bones = List.copyOf(bones);
  }
}
