package org.comparanda.gui.app;

import org.comparanda.gui.secondlook.SecondLookRoom;
import org.comparanda.gui.secondlook.SecondLookView;
import org.comparanda.gui.secondlook.SecondLookViewModel;
import org.comparanda.gui.text.Words;
import org.comparanda.house.RuleName;
import org.comparanda.measurement.PersonId;
import org.comparanda.secondlook.LookDesk;
import org.comparanda.secondlook.Queue;
import org.comparanda.storage.Collection;
import org.comparanda.tables.TraitTable;

/** Wires the Second Look screen. */
record SecondLookScreen(Workplace place) {
  SecondLookView view(String note) {
    SecondLookRoom room =
        new SecondLookRoom(
            this::desk,
            place.collection().trays(),
            place.collection().houseRules(),
            place.collection().people(),
            place.memory().recall(RememberedThings.PERSON).map(PersonId::new),
            place.tables().protocol(),
            place.taxa(),
            place
                .taxa()
                .following(
                    tree -> TraitTable.shipped(place.locale(), place.tables().protocol(), tree)),
            Words.of("secondlook", place.locale()),
            place.locale(),
            place.clock());
    return new SecondLookView(new SecondLookViewModel(room, place.work(), place.ui()), note);
  }

  private LookDesk desk(PersonId by) {
    Collection theirs = place.collection().by(by);
    Queue rule =
        new Queue(
            Integer.parseInt(theirs.houseRules().now(RuleName.SECOND_LOOK_EVERY)),
            Double.parseDouble(theirs.houseRules().now(RuleName.SECOND_LOOK_TYPICALITY)));
    return new LookDesk(theirs.trays(), theirs.draws(), rule);
  }
}
