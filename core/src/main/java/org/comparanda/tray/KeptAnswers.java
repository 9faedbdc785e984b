package org.comparanda.tray;

import java.util.List;
import org.comparanda.measurement.BoneId;
import org.comparanda.statistics.Outcome;

/** Repository of kept answers. They are only ever added; STOP wipes those of its bone. */
public interface KeptAnswers {
  /**
   * Keeps answers, all of them or none, and returns them with their ids. Not done for a bone that
   * is set aside as possibly human.
   */
  Outcome<List<KeptAnswer>> keep(List<KeptAnswer> answers);

  /** All of a bone, oldest first. */
  List<KeptAnswer> of(BoneId bone);

  /** All of the collection, oldest first. */
  List<KeptAnswer> all();
}
