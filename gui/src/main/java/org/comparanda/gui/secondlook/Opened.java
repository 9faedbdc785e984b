package org.comparanda.gui.secondlook;

import java.util.List;
import java.util.Optional;
import org.comparanda.bone.ElementKey;
import org.comparanda.bone.Portion;
import org.comparanda.bone.Side;
import org.comparanda.measurement.BoneId;
import org.comparanda.secondlook.Likeness;
import org.comparanda.tray.Call;

/** The bone that lies open: blind, or with every call on it. */
public sealed interface Opened {
  BoneId bone();

  /**
   * A look that is still to be taken. Holds nothing that anybody or anything said of the bone, so
   * that no part of the screen can show it.
   *
   * @param tray where it lies
   */
  record Blind(BoneId bone, String tray) implements Opened {}

  /**
   * All calls, once the person's own is recorded.
   *
   * @param sentence how the calls stand to each other
   * @param why why the bone was looked at again
   * @param columns the first call, then every look
   * @param settled the call that holds since; empty while nobody settled it
   * @param settlesAs what it would be if the person who sits here settled it
   * @param element what the bone is said to be now
   */
  record Both(
      BoneId bone,
      String tray,
      Likeness.Kind likeness,
      String sentence,
      String why,
      List<Said> columns,
      Optional<Said> settled,
      Call.Kind settlesAs,
      ElementKey element,
      Side side,
      Portion portion)
      implements Opened {
    public Both {
      columns = List.copyOf(columns);
    }
  }

  /**
   * One person's word.
   *
   * @param role "first call", "second look"
   * @param numbers what the numbers said beside it
   */
  record Said(
      String role,
      String name,
      String element,
      String basis,
      String who,
      String when,
      String numbers) {}
}
