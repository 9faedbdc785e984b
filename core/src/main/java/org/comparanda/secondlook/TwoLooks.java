package org.comparanda.secondlook;

import org.comparanda.tray.Call;

/**
 * Two people's calls on one bone.
 *
 * <p>Errors: {@link IllegalArgumentException} if they are on two bones or by one person.
 *
 * @param why why the bone was looked at again
 */
public record TwoLooks(Call first, Call second, Queued.Why why) {
  public TwoLooks {
    if (!first.bone().equals(second.bone())) {
      throw new IllegalArgumentException(
          "The calls are on two bones: " + first.bone() + " and " + second.bone() + ".");
    }
    if (first.person().equals(second.person())) {
      throw new IllegalArgumentException(
          "A second look at " + first.bone() + " needs another person.");
    }
  }
}
