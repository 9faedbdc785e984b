package org.comparanda.cli;

import org.comparanda.house.Right;
import org.comparanda.house.Rights;
import org.comparanda.measurement.PersonId;
import org.comparanda.storage.Collection;

/** What keepers alone may do, as soon as the house has one. */
final class Keepers {
  private Keepers() {}

  /** Errors: {@link CannotDo} if the house has a keeper and this person is none. */
  static void need(Collection opened, PersonId person, String otherwise) {
    Rights rights = opened.grants().rights();
    if (!rights.holders(Right.KEEPER).isEmpty()) {
      CannotDo.orElse(rights.asked(person, Right.KEEPER, otherwise));
    }
  }
}
